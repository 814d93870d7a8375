/** Which varieties must be grown out before their seed dies or runs out, most urgent first. */
import type { CropBook } from "../kinds/crop-book.ts";
import type { Kind } from "../kinds/crop.ts";
import { civilFromDay } from "../model/day.ts";
import type { Lot, Plan, Variety } from "../model/plan.ts";
import { standardOf } from "./ageing.ts";
import { type Estimate, estimateOf } from "./estimate.ts";
import { lotBook } from "./lot-book.ts";
import {
  inGrams,
  inSeeds,
  plantsForSeed,
  populationFloor,
  seedYield,
  seedsPerGram,
} from "./seed-yield.ts";
import { bestFirst } from "./sowing.ts";

/**
 * `gone`: lots are recorded, none is left. `dead`: the whole band of every lot lies under the
 * standard. `short`: less than the reserve. `doubtful`: the best lot is likelier under the standard
 * than not. `soon`: it likely will be within the years looked ahead. `unknown`: nothing can be said
 * of any lot: test one.
 */
export type RenewalCause = "gone" | "dead" | "short" | "doubtful" | "soon" | "unknown";

export interface Renewal {
  readonly variety: Variety;
  readonly kind: Kind;
  readonly cause: RenewalCause;
  /** The best lot in stock: what to sow; null: none is left. */
  readonly lot: Lot | null;
  readonly estimate: Estimate | null;
  /** The germination it must not fall under, fraction of 1, and whether one is published. */
  readonly standard: number;
  readonly isStandardPublished: boolean;
  /** First day the best lot may be, and is sure to be, under the standard; null: a century off. */
  readonly earliest: number | null;
  readonly latest: number | null;
  /** Seed of all lots in stock and the reserve, in seeds; null: not known, or none asked for. */
  readonly stockSeeds: number | null;
  readonly reserveSeeds: number | null;
  /** Years between sowing and seed: a biennial's takes two seasons. */
  readonly leadYears: 1 | 2;
  /** Plants to grow, at least the population that keeps the variety. */
  readonly plants: number;
}

/** Years looked ahead unless told otherwise. Ours. */
export const YEARS_AHEAD = 3;
const DAYS_A_YEAR = 365.25;

/** Plants of a kind for which nobody gives a population. Ours. */
const UNADVISED_PLANTS = 20;

const ORDER: readonly RenewalCause[] = ["gone", "dead", "short", "doubtful", "soon", "unknown"];

/** @param day from which it is looked ahead */
export function renewals(
  plan: Plan,
  book: CropBook,
  day: number,
  yearsAhead = YEARS_AHEAD,
): readonly Renewal[] {
  const shelf = lotBook(plan.lots);
  return plan.varieties
    .flatMap((variety): readonly Renewal[] => {
      const lots = shelf.ofVariety(variety.id);
      const kind = book.kind(variety.kind);
      // A hybrid's seed is not kept, so there is nothing to renew.
      if (!kind || variety.hybrid === true) return [];
      if (lots.length === 0 && variety.reserve === undefined) return [];
      const renewal = renewalOf(plan, variety, kind, lots, day, yearsAhead);
      return renewal ? [renewal] : [];
    })
    .sort(
      (a, b) =>
        ORDER.indexOf(a.cause) - ORDER.indexOf(b.cause) ||
        dueDay(a) - dueDay(b) ||
        (a.variety.name < b.variety.name ? -1 : 1),
    );
}

/** The day by which seed must have been sown; the later seed of biennials counts. */
function dueDay({ earliest, leadYears }: Renewal): number {
  return earliest === null ? Infinity : earliest - leadYears * DAYS_A_YEAR;
}

function renewalOf(
  plan: Plan,
  variety: Variety,
  kind: Kind,
  lots: readonly Lot[],
  day: number,
  yearsAhead: number,
): Renewal | null {
  const standard = standardOf(kind);
  const left = bestFirst(lots, kind, plan, day).filter(({ amount }) => amount?.value !== 0);
  const lives = left.map((lot) => ({ lot, estimate: estimateOf(lot, kind, plan.storagePlaces) }));
  const dated = lives.flatMap(({ lot, estimate }) =>
    estimate ? [{ lot, estimate, ...estimate.under(standard) }] : [],
  );
  const leadYears = kind.lifeCycle === "biennial" ? 2 : 1;
  const horizon = day + (yearsAhead + leadYears - 1) * DAYS_A_YEAR;
  const rateOn = (estimate: Estimate, on: number) =>
    estimate.likelyAt(Math.max(on, estimate.startDay));
  const best = [...dated].sort(
    (a, b) => rateOn(b.estimate, horizon) - rateOn(a.estimate, horizon),
  )[0];
  const stockSeeds = stockOf(left, kind);
  const reserveSeeds = inSeeds(variety.reserve, seedsPerGram(null, kind)) ?? null;
  const isShort = reserveSeeds !== null && stockSeeds !== null && stockSeeds < reserveSeeds;
  const isUnder = (on: number) => best !== undefined && rateOn(best.estimate, on) < standard;
  const isDead =
    best !== undefined &&
    best.latest !== null &&
    best.latest <= Math.max(day, best.estimate.startDay);
  const cause =
    left.length === 0
      ? "gone"
      : isDead
        ? "dead"
        : isShort
          ? "short"
          : best === undefined
            ? "unknown"
            : isUnder(day)
              ? "doubtful"
              : isUnder(horizon)
                ? "soon"
                : null;
  if (cause === null) return null;
  return {
    variety,
    kind,
    cause,
    lot: best?.lot ?? left[0] ?? null,
    estimate: best?.estimate ?? null,
    standard,
    isStandardPublished: kind.germinationPercent !== undefined,
    earliest: best?.earliest ?? null,
    latest: best?.latest ?? null,
    stockSeeds,
    reserveSeeds,
    leadYears,
    plants: plantsToGrow(variety, kind, lots),
  };
}

/** Seeds of all lots; null as soon as one of them is not counted. */
function stockOf(lots: readonly Lot[], kind: Kind): number | null {
  let sum = 0;
  for (const lot of lots) {
    const seeds = inSeeds(lot.amount, seedsPerGram(lot, kind));
    if (seeds === undefined) return null;
    sum += seeds;
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

/** Why a variety is to be renewed, one sentence that travels with it. */
export function renewalReason(renewal: Renewal): string {
  const { cause, lot, standard, isStandardPublished, earliest, latest } = renewal;
  const bar = `${Math.round(standard * 100)} %${isStandardPublished ? " (7 CFR 201.31)" : ", half of it"}`;
  const code = lot?.code ?? "";
  const lead = renewal.leadYears === 2 ? " Its seed takes two seasons." : "";
  switch (cause) {
    case "gone":
      return "No seed of it is left on the shelf.";
    case "dead":
      return `Its best lot ${code} lies under ${bar} by estimate.${lead}`;
    case "short":
      return `${renewal.stockSeeds ?? 0} seeds are left, ${renewal.reserveSeeds ?? 0} are to be kept.${lead}`;
    case "doubtful":
      return `Its best lot ${code} is likely under ${bar} by now: test it.${lead}`;
    case "soon":
      return `Its best lot ${code} is likely to fall under ${bar} between ${yearOf(earliest)} and ${yearOf(latest)}.${lead}`;
    case "unknown":
      return `Nothing is known of the age of ${code}: test it.${lead}`;
  }
}

function yearOf(day: number | null): string {
  return day === null ? "later" : String(civilFromDay(day).year);
}
