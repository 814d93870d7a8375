/** Which varieties must be grown out before their seed dies or runs out, most urgent first. */
import type { CropBook } from "../kinds/crop-book.ts";
import type { Kind } from "../kinds/crop.ts";
import { civilFromDay } from "../model/day.ts";
import type { Layout, Lot, Plan, Variety } from "../model/plan.ts";
import { standardOf } from "./ageing.ts";
import { type DaysUnder, type Estimate, estimateOf } from "./estimate.ts";
import { lotBook } from "./lot-book.ts";
import {
  inGrams,
  inSeeds,
  plantsForSeed,
  populationFloor,
  seedYield,
  seedsPerGram,
} from "./seed-yield.ts";
import { bestFirst, seedsToSow, sowingRows } from "./sowing.ts";

/**
 * `gone`: lots are recorded, none is left. `dead`: the whole band of every lot lies under the
 * standard. `doubtful`: the best lot is likelier under the standard than not. `short`: seed that
 * holds the standard is less than the reserve, or than one growing-out takes where no reserve is
 * named. `unknown`: nothing can be said of any lot: test one. `soon`: the best lot likely falls
 * under the standard so early that seed of this season, or of one of the next, is needed before.
 */
export type RenewalCause = "gone" | "dead" | "doubtful" | "short" | "unknown" | "soon";

export interface Renewal {
  readonly variety: Variety;
  readonly kind: Kind;
  readonly cause: RenewalCause;
  /**
   * Seasons it can wait: 0 is this one. So many that fresh seed is ripe before the best lot likely
   * falls under the standard; a biennial's seed takes two seasons.
   */
  readonly seasonsLeft: number;
  /** The season it must be grown out in at the latest: `2028`, or `2028/29` over New Year. */
  readonly by: string;
  /** The best lot in stock: what to sow; null: none is left. */
  readonly lot: Lot | null;
  readonly estimate: Estimate | null;
  /** The germination it must not fall under, fraction of 1, and whether one is published. */
  readonly standard: number;
  readonly isStandardPublished: boolean;
  /** First day the best lot may be, likely is, and is sure to be under the standard; null: a century off. */
  readonly earliest: number | null;
  readonly likely: number | null;
  readonly latest: number | null;
  /**
   * Seeds of lots that hold the standard, less what the layout sows of them; the reserve, in seeds.
   * Null: not known, or none asked for.
   */
  readonly stockSeeds: number | null;
  readonly reserveSeeds: number | null;
  /** Seeds that one growing-out of the plants takes. */
  readonly growOutSeeds: number;
  /** Years between sowing and seed: a biennial's takes two seasons. */
  readonly leadYears: 1 | 2;
  /** Plants to grow, at least the population that keeps the variety. */
  readonly plants: number;
  /** Plots of it in the layout whose seed is kept, and their plants. */
  readonly plots: readonly string[];
  readonly plantsPlaced: number;
}

/** How renewals look. */
export interface RenewalView {
  /** Its plantings for seed are named, and what it sows is taken off the stock. */
  readonly layout?: Layout | undefined;
  /** Seasons after the plan's that are looked at. */
  readonly seasonsAhead?: number;
}

/** Seasons looked ahead unless told otherwise. No source; our choice. */
const SEASONS_AHEAD = 2;
const DAYS_A_YEAR = 365.25;

/** Plants of a kind for which nobody gives a population. No source; our choice. */
const UNADVISED_PLANTS = 20;

const ORDER: readonly RenewalCause[] = ["gone", "dead", "doubtful", "short", "unknown", "soon"];

/**
 * This season's first, those that can wait after them by the season they can wait for.
 * @param day today
 */
export function renewals(
  plan: Plan,
  book: CropBook,
  day: number,
  view: RenewalView = {},
): readonly Renewal[] {
  const shelf = lotBook(plan.lots);
  const sown = sownSeeds(plan, book, view.layout);
  return plan.varieties
    .flatMap((variety) => {
      const lots = shelf.ofVariety(variety.id);
      const kind = book.kind(variety.kind);
      // A hybrid's seed is not kept, so there is nothing to renew.
      if (!kind || variety.hybrid === true) return [];
      if (lots.length === 0 && variety.reserve === undefined) return [];
      const renewal = renewalOf({ plan, variety, kind, lots, day, view, sown });
      return renewal ? [{ renewal, pressure: pressureOf(renewal, day) }] : [];
    })
    .sort(
      ({ renewal: a, pressure: pressureA }, { renewal: b, pressure: pressureB }) =>
        a.seasonsLeft - b.seasonsLeft ||
        ORDER.indexOf(a.cause) - ORDER.indexOf(b.cause) ||
        pressureA - pressureB ||
        (a.variety.name < b.variety.name ? -1 : 1),
    )
    .map(({ renewal }) => renewal);
}

/** Varieties with seed on the shelf that need not be renewed yet. */
export function fineVarieties(
  plan: Pick<Plan, "lots" | "varieties">,
  due: readonly Renewal[],
): readonly Variety[] {
  const listed = new Set(due.map(({ variety }) => variety.id));
  const shelf = lotBook(plan.lots);
  return plan.varieties.filter(
    ({ id, hybrid }) => hybrid !== true && !listed.has(id) && shelf.ofVariety(id).length > 0,
  );
}

/** Of two with one cause the lower goes first: the deader, the scarcer, the earlier. */
function pressureOf({ cause, estimate, likely, leadYears, ...of }: Renewal, day: number): number {
  if (cause === "dead" || cause === "doubtful") {
    return estimate ? estimate.likelyAt(Math.max(day, estimate.startDay)) : 0;
  }
  if (cause === "short") return (of.stockSeeds ?? 0) / (of.reserveSeeds ?? of.growOutSeeds);
  return likely === null ? 0 : likely - leadYears * DAYS_A_YEAR;
}

/** Seeds a layout takes of each lot. */
function sownSeeds(plan: Plan, book: CropBook, layout?: Layout): ReadonlyMap<string, number> {
  const sown = new Map<string, number>();
  if (!layout) return sown;
  for (const { parts } of sowingRows(plan, layout, book)) {
    for (const { lot, seeds } of parts) sown.set(lot.id, (sown.get(lot.id) ?? 0) + seeds);
  }
  return sown;
}

interface Looked {
  readonly plan: Plan;
  readonly variety: Variety;
  readonly kind: Kind;
  readonly lots: readonly Lot[];
  readonly day: number;
  readonly view: RenewalView;
  readonly sown: ReadonlyMap<string, number>;
}

/** A lot of which something can be said. */
interface Life {
  readonly lot: Lot;
  readonly estimate: Estimate;
  readonly likely: number | null;
}

function livesOf(lots: readonly Lot[], { kind, plan }: Looked): readonly Life[] {
  const standard = standardOf(kind);
  const lives: Life[] = [];
  for (const lot of lots) {
    const estimate = estimateOf(lot, kind, plan.storagePlaces);
    if (estimate) lives.push({ lot, estimate, likely: estimate.likelyUnder(standard) });
  }
  return lives;
}

/** The lot that speaks for the variety. */
type LongestLife = Life & DaysUnder;

/** The one that holds longest; of equals the likeliest to come up today. */
function longestLife(lives: readonly Life[], looked: Looked): LongestLife | null {
  let most = -Infinity;
  for (const { likely } of lives) most = Math.max(most, daysOf(likely));
  const longest = lives.filter(({ likely }) => daysOf(likely) === most);
  const lot =
    longest.length === 1
      ? longest[0]?.lot
      : likeliest(
          longest.map((each) => each.lot),
          looked,
        );
  const best = longest.find((each) => each.lot === lot);
  return best ? { ...best, ...best.estimate.under(standardOf(looked.kind)) } : null;
}

function likeliest(lots: readonly Lot[], { kind, plan, day }: Looked): Lot | undefined {
  return bestFirst(lots, kind, plan, day)[0];
}

function renewalOf(looked: Looked): Renewal | null {
  const { plan, variety, kind, lots, day, view } = looked;
  const standard = standardOf(kind);
  const left = lots.filter(({ state, amount }) => state === "in stock" && amount?.value !== 0);
  const lives = livesOf(left, looked);
  const best = longestLife(lives, looked);
  const lot = best?.lot ?? likeliest(left, looked);
  const plants = plantsToGrow(variety, kind, lots);
  const leadYears = kind.lifeCycle === "biennial" ? 2 : 1;
  const growOutSeeds = seedsToSow(plan, variety, kind, plants, { lot, day });
  const stockSeeds = stockOf(looked, left, lives);
  const reserveSeeds = inSeeds(variety.reserve, seedsPerGram(null, kind)) ?? null;
  const isShort = stockSeeds !== null && stockSeeds < (reserveSeeds ?? growOutSeeds);
  const seasons = best ? seasonsUntil(daysOf(best.likely), plan, leadYears) : 0;
  const cause = causeOf(left, best, isShort, day);
  const seasonsLeft = cause === "soon" ? seasons : 0;
  if (cause === "soon" && seasons > (view.seasonsAhead ?? SEASONS_AHEAD)) return null;
  const placed = (view.layout?.plantings ?? []).filter(
    (planting) => planting.variety === variety.id && planting.purpose === "seed",
  );
  return {
    variety,
    kind,
    cause,
    seasonsLeft,
    by: seasonName(plan, seasonsLeft),
    lot: lot ?? null,
    estimate: best?.estimate ?? null,
    standard,
    isStandardPublished: kind.germinationPercent !== undefined,
    earliest: best?.earliest ?? null,
    likely: best?.likely ?? null,
    latest: best?.latest ?? null,
    stockSeeds,
    reserveSeeds,
    growOutSeeds,
    leadYears,
    plants,
    plots: placed.map(({ code }) => code),
    plantsPlaced: placed.reduce((sum, planting) => sum + (planting.plants ?? 0), 0),
  };
}

function causeOf(
  left: readonly Lot[],
  best: LongestLife | null,
  isShort: boolean,
  day: number,
): RenewalCause {
  if (left.length === 0) return "gone";
  if (!best) return isShort ? "short" : "unknown";
  const now = Math.max(day, best.estimate.startDay);
  if (daysOf(best.latest) <= now) return "dead";
  if (daysOf(best.likely) <= now) return "doubtful";
  return isShort ? "short" : "soon";
}

/** Null is a century off. */
function daysOf(day: number | null): number {
  return day ?? Infinity;
}

/**
 * Seasons that may pass before it is grown out: the last of which the seed is ripe, at the end of
 * the season, while the old lot still holds.
 */
function seasonsUntil(likely: number, { season }: Pick<Plan, "season">, leadYears: 1 | 2): number {
  return Math.max(0, Math.floor((likely - season.last) / DAYS_A_YEAR) - (leadYears - 1));
}

function seasonName({ season }: Pick<Plan, "season">, later: number): string {
  const [first, last] = [civilFromDay(season.first).year, civilFromDay(season.last).year];
  const end = String(last + later).slice(-2);
  return first === last ? String(first + later) : `${first + later}/${end}`;
}

/** Seeds of lots that hold the standard now; null as soon as one of them is not counted. */
function stockOf(
  { kind, day, sown }: Looked,
  lots: readonly Lot[],
  lives: readonly Life[],
): number | null {
  const under = new Set<Lot>();
  for (const { lot, likely, estimate } of lives) {
    if (daysOf(likely) <= Math.max(day, estimate.startDay)) under.add(lot);
  }
  let sum = 0;
  for (const lot of lots) {
    if (under.has(lot)) continue;
    const seeds = inSeeds(lot.amount, seedsPerGram(lot, kind));
    if (seeds === undefined) return null;
    sum += Math.max(0, seeds - (sown.get(lot.id) ?? 0));
  }
  return sum;
}

/** Plants to grow out: what the seed wanted asks for, never fewer than keep the variety. */
export function plantsToGrow(variety: Variety, kind: Kind, lots: readonly Lot[]): number {
  const grams = inGrams(variety.wantedSeed, seedsPerGram(null, kind)) ?? 0;
  const found = seedYield(kind, lots);
  const plants = plantsForSeed(found ? grams : 0, found?.gramsPerPlant[0] ?? 1, kind);
  return populationFloor(kind) === undefined ? Math.max(plants, UNADVISED_PLANTS) : plants;
}
