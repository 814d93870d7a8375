/** From the plot to the packet: a harvest made into a lot, and later cleanings put to it. */
import { breedingOf } from "../generations/breeding.ts";
import type { Kind } from "../kinds/crop.ts";
import { planBook } from "../kinds/own-kinds.ts";
import { USUAL_PATTERN, codeByPattern } from "../lots/code-pattern.ts";
import { lotBook, lotsToSow } from "../lots/lot-book.ts";
import { lotsFromPlot } from "../lots/harvested-lots.ts";
import { civilFromDay, type DayNumber } from "../model/day.ts";
import { layoutOf } from "../model/layouts.ts";
import { LIMITS } from "../model/limits.ts";
import type { Lot, Plan, Planting } from "../model/plan.ts";
import { addLots, changeLots, nextLotId } from "../edits/lot-edits.ts";
import type { Edit } from "../edits/edit.ts";
import { patched } from "../edits/edit.ts";
import { currentEntries, entriesUntil } from "./current-entries.ts";
import { frozenIsolation } from "./frozen-isolation.ts";
import { type PlotRecord, plantsStanding, plotRecord } from "./plot-record.ts";
import * as steps from "../words/shelf-step-words.ts";

/** What can be harvested: a planting of a layout, as the record has it on a day. */
export interface Harvest {
  readonly layoutId: string;
  readonly plantingId: string;
  /** Entries after it are not in the lot. */
  readonly on: DayNumber;
}

/**
 * The lot that this harvest makes: code by the plan's pattern, year and plot, plants saved from,
 * grams cleaned so far that no other lot of the plot has, lots it was sown from, and how it was
 * isolated. Null when there is no such planting.
 */
export function harvestLot(plan: Plan, { layoutId, plantingId, on }: Harvest): Lot | null {
  const planting = layoutOf(plan, layoutId).plantings.find(({ id }) => id === plantingId);
  const variety = plan.varieties.find(({ id }) => id === planting?.variety);
  if (!planting || !variety) return null;
  const record = recordOf(plan, plantingId, on);
  // What flowered after the harvest crossed nothing of it.
  const isolation = frozenIsolation(plan, layoutId, plantingId, harvestDay(record) ?? on);
  const parents = lotsToSow(plan, planting, variety).map(({ id }) => id);
  const grams = gramsToTake(plan, plantingId, layoutId, on);
  const plants = plantsSavedFrom(record, planting.plants);
  const kind = planBook(plan).kind(variety.kind);
  const pollen = kind ? pollenPlants(record, planting, kind) : null;
  const harvestYear = civilFromDay(harvestDay(record) ?? on).year;
  const code = codeByPattern(
    plan.lotCodePattern ?? USUAL_PATTERN,
    {
      kind: kind?.name ?? "",
      variety: variety.name,
      harvestYear,
      plot: planting.code,
    },
    lotBook(plan.lots).codes,
  );
  return patched<Lot>(
    { id: nextLotId(plan), code, variety: variety.id, state: "in stock" },
    {
      harvestYear,
      from: {
        what: "own",
        plot: planting.code,
        season: plan.season.name,
        planting: planting.id,
        ...(plants === null ? {} : { plants }),
        ...(pollen === null ? {} : { pollenPlants: pollen }),
        ...(grams > 0 ? { cleanedGrams: grams } : {}),
      },
      ...(grams > 0 ? { amount: { unit: "g" as const, value: grams } } : {}),
      ...(parents.length > 0 ? { grownFrom: parents.slice(0, LIMITS.lotRefs) } : {}),
      ...(isolation ? { isolation } : {}),
    },
  );
}

/** Puts the lot on the shelf, in one step. */
export function keepHarvest(lot: Lot): Edit {
  return addLots([lot], steps.harvestInto(lot.code));
}

/** Grams cleaned from a plot so far that are in no lot of it yet. */
export function gramsToTake(
  plan: Plan,
  plantingId: string,
  layoutId: string,
  on: DayNumber,
): number {
  const planting = layoutOf(plan, layoutId).plantings.find(({ id }) => id === plantingId);
  if (!planting) return 0;
  const cleaned = recordOf(plan, plantingId, on).cleanedGrams ?? 0;
  const taken = lotsFromPlot(plan, planting).reduce(
    (sum, { from }) => sum + (from?.cleanedGrams ?? 0),
    0,
  );
  // Grams as they are weighed: a ten-thousandth is rounding.
  return Math.max(0, Math.round((cleaned - taken) * 1e4) / 1e4);
}

/** Puts grams that were cleaned later to a lot: to what is left of it and to what its plants gave. */
export function takeGrams(lot: Lot, grams: number): Edit {
  const { from, amount } = lot;
  const isWeighed = amount === undefined || amount.unit === "g";
  return changeLots(
    [lot.id],
    {
      ...(isWeighed ? { amount: { unit: "g", value: (amount?.value ?? 0) + grams } } : {}),
      from: {
        ...(from ?? { what: "own" as const }),
        cleanedGrams: (from?.cleanedGrams ?? 0) + grams,
      },
    },
    steps.putMore(grams, lot.code),
  );
}

function recordOf(plan: Plan, plantingId: string, on: DayNumber): PlotRecord {
  return plotRecord(entriesUntil(currentEntries(plan.entries), plantingId, on));
}

/** Plants that were harvested where they were counted, else those standing. */
function plantsSavedFrom(record: PlotRecord, planned: number | undefined): number | null {
  const standing = plantsStanding(record, planned);
  if (record.harvestedPlants === null) return standing;
  return standing === null ? record.harvestedPlants : Math.min(record.harvestedPlants, standing);
}

/**
 * Plants that shed pollen, for the effective population: those set out and still standing, of what
 * was counted alone. With hand pollination only the grower knows of which plants pollen was taken;
 * of females and males those that were not harvested are the males.
 */
function pollenPlants(record: PlotRecord, { cover }: Planting, kind: Kind): number | null {
  const { setOutPlants, harvestedPlants, covers } = record;
  const isByHand = cover === "hand" || covers.some((stay) => stay.cover === "hand");
  const standing = setOutPlants === null ? null : plantsStanding(record, setOutPlants);
  if (isByHand || standing === null) return null;
  if (breedingOf(kind).sexes === "both") return standing;
  return harvestedPlants === null ? null : Math.max(0, standing - harvestedPlants);
}

function harvestDay({ entries }: PlotRecord): DayNumber | null {
  return entries.findLast(({ what }) => what === "harvested")?.on ?? null;
}
