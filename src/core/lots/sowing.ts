/** What to sow for each planting of a layout: how many seeds, from which lots. */
import type { CropBook } from "../kinds/crop-book.ts";
import type { Kind } from "../kinds/crop.ts";
import { raisingOffer } from "../kinds/raising-days.ts";
import { isStanding } from "../model/layouts.ts";
import type { Layout, Lot, Plan, Planting, Variety } from "../model/plan.ts";
import { estimateOf } from "./estimate.ts";
import { varietyIndex } from "./variety-index.ts";
import { latestTest } from "./germination.ts";
import { lotBook } from "./lot-book.ts";
import { inSeeds, seedsPerGram } from "./seed-yield.ts";
import { standardOf } from "./ageing.ts";

/** Rules of thumb for what comes up in the open, from memory: good, fair and poor seedbeds. */
export const EMERGENCE = { good: 0.8, fair: 0.6, poor: 0.4 } as const;
/** Extra plants where nobody says: one in ten. No source; our choice. */
export const USUAL_SPARE = 0.1;
/** Seed that is all but dead is not reckoned with: no less than this. */
const LEAST_RATE = 0.02;

/** Seeds = plants x (1 + spare) / (germination x emergence), rounded up. */
export function seedsFor(
  plants: number,
  spare: number,
  germination: number,
  emergence: number,
): number {
  return Math.ceil((plants * (1 + spare)) / (germination * emergence) - 1e-9);
}

export interface SownPart {
  readonly lot: Lot;
  readonly seeds: number;
  /** Null where no seeds per gram are known. */
  readonly grams: number | null;
}

export interface SowingRow {
  readonly planting: Planting;
  readonly variety: Variety;
  readonly kind: Kind;
  /**
   * Day it is sown; null: no start given. For transplants under glass: the day given, else one
   * counted back from setting out, else, where no weeks are known for the kind, setting out itself.
   */
  readonly day: number | null;
  readonly inTrays: boolean;
  /** For transplants, how the day of sowing is known; `not known`: it is that of setting out. */
  readonly trayDay: "given" | "counted back" | "not known" | null;
  /** Lots were named for it; else those in stock are proposed. */
  readonly isNamed: boolean;
  readonly parts: readonly SownPart[];
  /** The lots it would be sown from: all that are named, else those that are proposed. */
  readonly lots: readonly Lot[];
  /** Seeds needed, of the first lot's germination; null: no number of plants. */
  readonly seeds: number | null;
  readonly emergence: number;
  readonly isEmergenceOwn: boolean;
  readonly spare: number;
  /** Seeds that the stock does not reach for, and the plants they stand for. */
  readonly missingSeeds: number;
  readonly missingPlants: number;
}

/**
 * One row for each planting that seed is sown for, in order of the day, then of the code. Roots,
 * bulbs and plants of a second year are set out, not sown: they have none. Stock is given out in
 * that order, so what an early planting takes is gone for a later one.
 */
export function sowingRows(plan: Plan, layout: Layout, book: CropBook): readonly SowingRow[] {
  const varieties = varietyIndex(plan.varieties);
  const left = new Map<string, number>();
  return layout.plantings
    .flatMap((planting) => {
      const variety = varieties.get(planting.variety);
      const kind = book.kind(variety?.kind ?? "");
      return variety && kind && isSown(planting, kind) ? [{ planting, variety, kind }] : [];
    })
    .sort(
      (a, b) =>
        (sowingDay(a).day ?? Infinity) - (sowingDay(b).day ?? Infinity) ||
        (a.planting.code < b.planting.code ? -1 : 1),
    )
    .map((each) => sowingRow(plan, each, left));
}

/** The day of sowing, under glass where it is set out later. */
function sowingDay({ planting, kind }: Sown): Pick<SowingRow, "day" | "trayDay"> {
  const { start } = planting;
  if (start?.method !== "transplanted") return { day: start?.date ?? null, trayDay: null };
  if (start.sownUnderGlass !== undefined) return { day: start.sownUnderGlass, trayDay: "given" };
  const counted = raisingOffer(planting, kind, undefined).underGlass;
  return counted
    ? { day: counted.day, trayDay: "counted back" }
    : { day: start.date, trayDay: "not known" };
}

/**
 * Whether its seed is sown this season: not a biennial's overwintered roots or plants set out, nor
 * what stands already.
 */
export function isSown(planting: Planting, { lifeCycle }: Kind): boolean {
  const { start, flowering } = planting;
  if (isStanding(planting)) return false;
  return !(lifeCycle === "biennial" && start?.method === "transplanted" && flowering === "yes");
}

interface Sown {
  readonly planting: Planting;
  readonly variety: Variety;
  readonly kind: Kind;
}

function sowingRow(plan: Plan, sown: Sown, left: Map<string, number>): SowingRow {
  const { planting, variety, kind } = sown;
  const inTrays = planting.start?.method === "transplanted";
  const { emergence, isEmergenceOwn, spare } = sowingRule(plan, variety, inTrays);
  const { day, trayDay } = sowingDay(sown);
  const shelf = lotBook(plan.lots);
  const named = (planting.lots ?? variety.lots)?.flatMap((id) => shelf.lot(id) ?? []);
  const sowDay = day ?? plan.season.first;
  const lots = named ?? bestFirst(shelf.ofVariety(variety.id), kind, plan, sowDay);
  const rateOf = (lot: Lot | undefined) => sowingRate(lot, kind, plan, sowDay);
  const given = giveOut(planting.plants ?? 0, lots, left, kind, (lot, plants) =>
    seedsFor(plants, spare, rateOf(lot), emergence),
  );
  const isStocked = shelf.ofVariety(variety.id).length > 0;
  return {
    planting,
    variety,
    kind,
    day,
    inTrays,
    trayDay,
    isNamed: named !== undefined,
    parts: given.parts,
    lots: named ?? (given.parts.length > 0 ? given.parts.map(({ lot }) => lot) : lots.slice(0, 1)),
    seeds:
      planting.plants === undefined
        ? null
        : seedsFor(planting.plants, spare, rateOf(lots[0]), emergence),
    emergence,
    isEmergenceOwn,
    spare,
    // A grower who keeps no shelf of this variety is not told that it is empty.
    missingSeeds: isStocked ? given.missingSeeds : 0,
    missingPlants: isStocked ? given.missingPlants : 0,
  };
}

/** What comes up of seed that can germinate, and what is sown to spare. */
function sowingRule(plan: Pick<Plan, "sowing">, { sowing }: Variety, inTrays: boolean) {
  const own = inTrays
    ? (sowing?.trayEmergence ?? plan.sowing?.trayEmergence)
    : (sowing?.emergence ?? plan.sowing?.emergence);
  return {
    emergence: own ?? (inTrays ? EMERGENCE.good : EMERGENCE.fair),
    isEmergenceOwn: own !== undefined,
    spare: sowing?.spare ?? plan.sowing?.spare ?? USUAL_SPARE,
  };
}

/** Seeds of a lot for so many plants, sown in the open. */
export function seedsToSow(
  plan: Pick<Plan, "sowing" | "storagePlaces">,
  variety: Variety,
  kind: Kind,
  plants: number,
  { lot, day }: { readonly lot: Lot | undefined; readonly day: number },
): number {
  const { emergence, spare } = sowingRule(plan, variety, false);
  return seedsFor(plants, spare, sowingRate(lot, kind, plan, day), emergence);
}

/** Rate of what comes up of a lot on a day, without hard seed; of a lot nobody knows, the standard. */
export function sowingRate(
  lot: Lot | undefined,
  kind: Kind,
  plan: Pick<Plan, "storagePlaces">,
  day: number,
): number {
  const estimate = lot && estimateOf(lot, kind, plan.storagePlaces);
  if (!estimate) {
    const test = lot && latestTest(lot);
    return Math.max(LEAST_RATE, test ? test.sprouted / test.sown : standardOf(kind));
  }
  const test = latestTest(lot);
  const alive = (test?.sprouted ?? 1) + (test?.hard ?? 0);
  const soft = test && alive > 0 ? test.sprouted / alive : 1;
  return Math.max(LEAST_RATE, estimate.likelyAt(day) * soft);
}

/** Lots in stock, the likeliest to come up first; of equals the older. */
export function bestFirst(
  lots: readonly Lot[],
  kind: Kind,
  plan: Pick<Plan, "storagePlaces">,
  day: number,
): readonly Lot[] {
  return lots
    .filter(({ state }) => state === "in stock")
    .map((lot) => ({ lot, rate: sowingRate(lot, kind, plan, day) }))
    .sort((a, b) => b.rate - a.rate || (a.lot.harvestYear ?? 0) - (b.lot.harvestYear ?? 0))
    .map(({ lot }) => lot);
}

interface Given {
  readonly parts: readonly SownPart[];
  readonly missingSeeds: number;
  readonly missingPlants: number;
}

/** Takes seed from lot after lot until the plants are sown for; what is not counted has no end. */
function giveOut(
  plants: number,
  lots: readonly Lot[],
  left: Map<string, number>,
  kind: Kind,
  need: (lot: Lot | undefined, plants: number) => number,
): Given {
  const parts: SownPart[] = [];
  let open = plants;
  for (const lot of lots) {
    if (open <= 0) break;
    const perGram = seedsPerGram(lot, kind);
    const stock = left.get(lot.id) ?? stockOf(lot, perGram);
    const wanted = need(lot, open);
    const seeds = Math.min(wanted, stock);
    if (seeds <= 0) continue;
    left.set(lot.id, stock - seeds);
    parts.push({ lot, seeds, grams: perGram === undefined ? null : seeds / perGram });
    open = seeds >= wanted ? 0 : open * (1 - seeds / wanted);
  }
  const missingPlants = Math.max(0, Math.ceil(open - 1e-9));
  return {
    parts,
    missingPlants,
    missingSeeds: missingPlants > 0 ? need(lots[0], missingPlants) : 0,
  };
}

function stockOf(lot: Lot, perGram: number | undefined): number {
  if (lot.state !== "in stock") return 0;
  return inSeeds(lot.amount, perGram) ?? (lot.amount?.value === 0 ? 0 : Infinity);
}
