/**
 * Whether a lot is alive: a band, never one number. It starts from the latest test, with its exact
 * limits, or from what fresh seed of the kind may be; from there both edges fall with the time spent
 * in each place. A test always wins: nothing before it counts any more.
 */
import type { Kind } from "../kinds/crop.ts";
import { dayFromCivil } from "../model/day.ts";
import type { Lot, Plan, StoragePlace } from "../model/plan.ts";
import { type LifeNote, standardOf } from "./ageing.ts";
import { latestTest, testResult } from "./germination.ts";
import { type Rates, normalBelow, probit } from "./normal.ts";
import { type Edge, type StorageClock, storageClock } from "./storage-clock.ts";
import { insideRate } from "./viability.ts";

export interface Estimate {
  /** Where it starts: a test, or what is assumed of fresh seed. */
  readonly from: "test" | "harvest" | "arrival";
  readonly startDay: number;
  /** Germination on a day not before the start: [least, most], hard seed counted in. */
  at(day: number): Rates;
  /**
   * Between the edges: the tested rate aged as handbooks say where they speak of such a place, else
   * at the geometric mean of both edges; for amounts to sow and what to renew.
   */
  likelyAt(day: number): number;
  /**
   * First day under a rate, by the fast edge, likely, and by the slow one; null: not within a
   * hundred years.
   * The start day where it is under it from the start.
   */
  under(rate: number): {
    readonly earliest: number | null;
    readonly likely: number | null;
    readonly latest: number | null;
  };
  readonly notes: readonly LifeNote[];
}

/** Fresh seed of which nobody knows better has at most this rate. No source; our choice. */
const FRESH_MOST = 0.98;
/** Seeds whose quarter keeps an assumed rate off 0 and 1. */
const ASSUMED_SEEDS = 100;
/** Edges of a band keep so far off 0 and 1, whose probits are not finite. */
const LEAST_EDGE = 0.001;
/** Day of the harvest year from which untested seed is counted: 1 October. No source; our choice. */
const HARVEST_MONTH = 10;
const FARTHEST_DAYS = 36_525;

const made = new WeakMap<
  Lot,
  { readonly shelf: StoragePlaces; readonly kind: Kind; readonly estimate: Estimate | null }
>();
type StoragePlaces = Plan["storagePlaces"];

/**
 * The estimate of a lot; null where nothing can be said: no test and no year, or a kind of which
 * neither constants nor handbook years are known.
 */
export function estimateOf(lot: Lot, kind: Kind, storagePlaces: StoragePlaces): Estimate | null {
  const known = made.get(lot);
  if (known && known.shelf === storagePlaces && known.kind === kind) return known.estimate;
  const estimate = madeEstimate(lot, kind, storagePlaces);
  made.set(lot, { shelf: storagePlaces, kind, estimate });
  return estimate;
}

interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly clock: StorageClock;
}

function madeEstimate(lot: Lot, kind: Kind, places: StoragePlaces): Estimate | null {
  const start = startOf(lot, kind);
  if (!start) return null;
  const stretches = stretchesOf(lot, kind, places, start.day);
  if (!stretches) return null;
  const [low, likely, high] = start.rates.map(probit) as [number, number, number];
  const lost = (day: number, edge: Edge) => lossUntil(stretches, day, edge);
  return {
    from: start.from,
    startDay: start.day,
    at: (day) => [normalBelow(low - lost(day, "fast")), normalBelow(high - lost(day, "slow"))],
    likelyAt: (day) => normalBelow(likely - lost(day, "likely")),
    under: (rate) => ({
      earliest: dayOfLoss(stretches, low - probit(rate), "fast"),
      likely: dayOfLoss(stretches, likely - probit(rate), "likely"),
      latest: dayOfLoss(stretches, high - probit(rate), "slow"),
    }),
    notes: [...new Set(stretches.flatMap(({ clock }) => clock.notes))],
  };
}

interface Start {
  readonly from: Estimate["from"];
  readonly day: number;
  /** Least, likely, most. */
  readonly rates: readonly [number, number, number];
}

function startOf(lot: Lot, kind: Kind): Start | null {
  const test = latestTest(lot);
  if (test) {
    const { limitsWithHard, rateWithHard } = testResult(test);
    const [least, most] = limitsWithHard;
    const likely = insideRate(rateWithHard, test.sown);
    const rates = [Math.max(least, LEAST_EDGE), likely, Math.min(most, 1 - LEAST_EDGE)] as const;
    return { from: "test", day: test.date, rates };
  }
  // Fresh seed is better than the standard asks, how much nobody has said: from half way up.
  const least = (standardOf(kind) + FRESH_MOST) / 2;
  const rates = [least, (least + FRESH_MOST) / 2, FRESH_MOST].map((rate) =>
    insideRate(rate, ASSUMED_SEEDS),
  ) as [number, number, number];
  if (lot.harvestYear !== undefined) {
    const day = dayFromCivil({ year: lot.harvestYear, month: HARVEST_MONTH, day: 1 });
    return { from: "harvest", day, rates };
  }
  if (lot.from?.on === undefined) return null;
  // It may have been old when it came: only its best is that of fresh seed.
  const [, , most] = rates;
  const old = standardOf(kind) / 2;
  return { from: "arrival", day: lot.from.on, rates: [old, (old + most) / 2, most] };
}

/** Where it lay from the start day on, in order; null where ageing in one of them is not known. */
function stretchesOf(
  lot: Lot,
  kind: Kind,
  places: StoragePlaces,
  start: number,
): readonly Stretch[] | null {
  const index = placeIndex(places);
  const stays = lot.stored ?? [];
  const stretches: Stretch[] = [];
  const add = (from: number, to: number, place: StoragePlace | null, moisturePct?: number) => {
    if (to <= start || to <= from) return true;
    const clock = storageClock(kind, place?.conditions ? place : null, moisturePct);
    if (clock) stretches.push({ from: Math.max(from, start), to, clock });
    return clock !== null;
  };
  const first = stays[0]?.from ?? -Infinity;
  let isKnown = stays.length === 0 ? add(start, Infinity, null) : add(start, first, null);
  stays.forEach(({ place, from = -Infinity, moisturePct }, at) => {
    const until = stays[at + 1]?.from ?? Infinity;
    isKnown = add(from, until, index.get(place) ?? null, moisturePct) && isKnown;
  });
  return isKnown ? stretches : null;
}

const placeIndexes = new WeakMap<object, ReadonlyMap<string, StoragePlace>>();

function placeIndex(places: StoragePlaces): ReadonlyMap<string, StoragePlace> {
  const known = placeIndexes.get(places);
  if (known) return known;
  const index = new Map(places.map((place) => [place.id, place]));
  placeIndexes.set(places, index);
  return index;
}

/** Where a lot lies now; null: not known. */
export function shelfPlace(lot: Pick<Lot, "stored">, places: StoragePlaces): StoragePlace | null {
  return placeIndex(places).get(lot.stored?.at(-1)?.place ?? "") ?? null;
}

function lossUntil(stretches: readonly Stretch[], day: number, edge: Edge): number {
  let sum = 0;
  for (const { from, to, clock } of stretches) {
    if (day <= from) break;
    sum += clock.lost(from, Math.min(day, to), edge);
  }
  return sum;
}

function dayOfLoss(stretches: readonly Stretch[], loss: number, edge: Edge): number | null {
  const start = stretches[0]?.from ?? 0;
  let left = loss;
  for (const { from, to, clock } of stretches) {
    const day = clock.dayWhenLost(from, left, edge);
    if (day <= to) return day > start + FARTHEST_DAYS ? null : Math.ceil(day);
    left -= clock.lost(from, to, edge);
  }
  return null;
}
