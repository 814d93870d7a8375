/** How long the seed of a variety lasts: of its lots by the early end of their bands, and of fresh seed. */
import type { Kind } from "../kinds/crop.ts";
import { standardOf } from "../lots/ageing.ts";
import { type Estimate, estimateOf } from "../lots/estimate.ts";
import { civilFromDay } from "../model/day.ts";
import type { Lot, Plan } from "../model/plan.ts";

const DAYS_A_YEAR = 365.25;

/** Which end of a lot's band is counted with: the early one, or the likely one. */
export type SeedEnd = "earliest" | "likely";

/** A lot and the first day it may be, and likely is, under the standard; null: not within a century. */
export interface LotEnd {
  readonly lot: Lot;
  readonly estimate: Estimate;
  readonly earliest: number | null;
  readonly likely: number | null;
}

/**
 * The lot in stock that holds longest by an end; null where nothing can be said of any: a test or a
 * year is missing, or the kind has no figure of seed life.
 */
export function lastingLot(
  lots: readonly Lot[],
  kind: Kind,
  plan: Pick<Plan, "storagePlaces">,
  end: SeedEnd,
): LotEnd | null {
  const ends = lots.flatMap((lot): readonly LotEnd[] => {
    if (lot.state !== "in stock" || lot.amount?.value === 0) return [];
    const estimate = estimateOf(lot, kind, plan.storagePlaces);
    return estimate ? [{ lot, estimate, ...estimate.under(standardOf(kind)) }] : [];
  });
  const dayOf = (each: LotEnd) => each[end] ?? Infinity;
  return ends.reduce<LotEnd | null>(
    (best, each) => (best === null || dayOf(each) > dayOf(best) ? each : best),
    null,
  );
}

/** The last season, counted from the plan's own, that ends on a day or before it; below 0: none. */
export function lastSeasonBefore(day: number | null, { season }: Pick<Plan, "season">): number {
  return day === null ? Infinity : Math.floor((day - season.last) / DAYS_A_YEAR);
}

/** Seasons that fresh seed keeps, and on what that rests; null: nobody knows. */
export interface FreshLife {
  readonly seasons: number;
  readonly basis: "handbook" | "estimate";
}

/**
 * Seasons from a growing to the last one that brings fresh seed while that seed likely holds its
 * standard, where it lies as the lot does now. In an ordinary room or a better place seed keeps at
 * least the fewest years that handbooks give, which is the early end of their band.
 */
export function freshLife(
  kind: Kind,
  like: Lot | null,
  plan: Pick<Plan, "storagePlaces" | "season">,
): FreshLife | null {
  const reckoned = seasonsKept(kind, like, plan);
  if (reckoned === null) return null;
  const inRoom = seasonsKept(kind, null, plan) ?? 0;
  const least = reckoned < inRoom ? 0 : Math.floor(kind.seedLifeYears?.value[0] ?? 0);
  return least > reckoned
    ? { seasons: least, basis: "handbook" }
    : { seasons: reckoned, basis: "estimate" };
}

function seasonsKept(
  kind: Kind,
  like: Lot | null,
  plan: Pick<Plan, "storagePlaces" | "season">,
): number | null {
  const place = like?.stored?.at(-1)?.place;
  const { year } = civilFromDay(plan.season.last);
  const fresh: Lot = {
    id: "fresh",
    code: "fresh",
    variety: "fresh",
    state: "in stock",
    harvestYear: year,
    ...(place === undefined ? {} : { stored: [{ place }] }),
  };
  const estimate = estimateOf(fresh, kind, plan.storagePlaces);
  if (!estimate) return null;
  return Math.max(0, lastSeasonBefore(estimate.under(standardOf(kind)).likely, plan));
}
