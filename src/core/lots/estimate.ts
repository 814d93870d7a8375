/**
 * Whether a lot is alive: a band, never one number. It starts from the latest test, with its exact
 * limits, or from what fresh seed of the kind may be; from there both edges fall with the time spent
 * in each place. A test always wins: nothing before it counts any more.
 */
import type { Kind } from "../kinds/crop.ts";
import { dayFromCivil } from "../model/day.ts";
import type { Lot, Plan, StoragePlace } from "../model/plan.ts";
import { HANDBOOK_FRESH, type LifeNote, standardOf } from "./ageing.ts";
import { latestTest } from "./germination.ts";
import { type Rates, exactLimits, normalBelow, probit } from "./normal.ts";
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
  under(rate: number): DaysUnder;
  /** The likely one of them, for who asks no more. */
  likelyUnder(rate: number): number | null;
  readonly notes: readonly LifeNote[];
}

/**
 * First day under a rate, by the fast edge, likely, and by the slow one; null: not within a hundred
 * years. The start day where it is under it from the start.
 */
export interface DaysUnder {
  readonly earliest: number | null;
  readonly likely: number | null;
  readonly latest: number | null;
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

type StoragePlaces = Plan["storagePlaces"];

const made = new WeakMap<Lot, LotEstimate>();

/**
 * The estimate of a lot; null where nothing can be said: no test and no year, or a kind of which
 * neither constants nor handbook years are known.
 */
export function estimateOf(lot: Lot, kind: Kind, storagePlaces: StoragePlaces): Estimate | null {
  const known = made.get(lot);
  if (known?.isOf(kind, storagePlaces)) return known;
  const start = startOf(lot, kind);
  const stretches = start && stretchesOf(lot, kind, storagePlaces, start.day);
  if (!stretches) return null;
  const estimate = new LotEstimate({ kind, shelf: storagePlaces, start, stretches });
  made.set(lot, estimate);
  return estimate;
}

interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly clock: StorageClock;
}

/** What it is made from, beside the lot itself. */
interface Grounds {
  readonly kind: Kind;
  readonly shelf: StoragePlaces;
  readonly start: Start;
  readonly stretches: readonly Stretch[];
}

/** A class, since a shelf has thousands: one object each, and nothing made that nobody reads. */
class LotEstimate implements Estimate {
  readonly #kind: Kind;
  readonly #shelf: StoragePlaces;
  readonly #start: Start;
  readonly #stretches: readonly Stretch[];
  readonly #share: number;

  constructor({ kind, shelf, start, stretches }: Grounds) {
    this.#kind = kind;
    this.#shelf = shelf;
    this.#start = start;
    this.#stretches = stretches;
    this.#share = likelyShare(kind, start, stretches);
  }

  isOf(kind: Kind, shelf: StoragePlaces): boolean {
    return this.#kind === kind && this.#shelf === shelf;
  }

  get from(): Estimate["from"] {
    return this.#start.from;
  }

  get startDay(): number {
    return this.#start.day;
  }

  get notes(): readonly LifeNote[] {
    return [...new Set(this.#stretches.flatMap(({ clock }) => clock.notes))];
  }

  at(day: number): Rates {
    const { low, high } = this.#start.probits;
    return [
      normalBelow(low - lossUntil(this.#stretches, day, "fast")),
      normalBelow(high - lossUntil(this.#stretches, day, "slow")),
    ];
  }

  likelyAt(day: number): number {
    const lost = this.#share * lossUntil(this.#stretches, day, "likely");
    return Math.min(normalBelow(this.#start.probits.likely - lost), this.at(day)[1]);
  }

  likelyUnder(rate: number): number | null {
    const { likely, high } = this.#start.probits;
    const bar = probit(rate);
    const day = dayOfLoss(this.#stretches, (likely - bar) / this.#share, "likely");
    const latest = dayOfLoss(this.#stretches, high - bar, "slow");
    return latest !== null && (day === null || day > latest) ? latest : day;
  }

  under(rate: number): DaysUnder {
    const { low, high } = this.#start.probits;
    const bar = probit(rate);
    return {
      earliest: dayOfLoss(this.#stretches, low - bar, "fast"),
      likely: this.likelyUnder(rate),
      latest: dayOfLoss(this.#stretches, high - bar, "slow"),
    };
  }
}

/**
 * How much of the likely loss holds for a lot. Years of handbooks are told of seed nobody tested,
 * which here begins lower than their fresh seed: aged as fast, it would be called dead a quarter of
 * those years too soon. It is slowed to fall to the standard when they say.
 */
function likelyShare(kind: Kind, { from, probits }: Start, stretches: readonly Stretch[]): number {
  const isByHandbook = stretches.every(({ clock }) => clock.notes.includes("handbook"));
  if (from !== "harvest" || !isByHandbook) return 1;
  const bar = probit(standardOf(kind));
  const fall = probit(HANDBOOK_FRESH) - bar;
  const own = probits.likely - bar;
  return fall > own && own > 0 ? own / fall : 1;
}

/** Probits of the least, likely and highest rate. */
interface Probits {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

interface Start {
  readonly from: Estimate["from"];
  readonly day: number;
  readonly probits: Probits;
}

function startOf(lot: Lot, kind: Kind): Start | null {
  const test = latestTest(lot);
  if (test) {
    const { date, sown, sprouted, hard = 0 } = test;
    return { from: "test", day: date, probits: testedProbits(sprouted + hard, sown) };
  }
  const { harvestYear } = lot;
  if (harvestYear !== undefined) {
    const day = dayFromCivil({ year: harvestYear, month: HARVEST_MONTH, day: 1 });
    return { from: "harvest", day, probits: untestedProbits(standardOf(kind)).fresh };
  }
  if (lot.from?.on === undefined) return null;
  return {
    from: "arrival",
    day: lot.from.on,
    probits: untestedProbits(standardOf(kind)).unknownAge,
  };
}

function probitsOf(low: number, likely: number, high: number): Probits {
  return { low: probit(low), likely: probit(likely), high: probit(high) };
}

const tested = new Map<number, Probits>();
const TESTED_KEPT = 20_000;
/** More than a test has seeds: see core/model/lot-schema.ts. */
const MORE_THAN_SOWN = 2 ** 21;

/** @param alive seeds of the test that sprouted or stayed hard */
function testedProbits(alive: number, sown: number): Probits {
  const key = sown * MORE_THAN_SOWN + alive;
  const known = tested.get(key);
  if (known) return known;
  const [least, most] = exactLimits(alive, sown);
  const likely = insideRate(alive / sown, sown);
  const probits = probitsOf(Math.max(least, LEAST_EDGE), likely, Math.min(most, 1 - LEAST_EDGE));
  if (tested.size >= TESTED_KEPT) tested.clear();
  tested.set(key, probits);
  return probits;
}

interface Untested {
  readonly fresh: Probits;
  readonly unknownAge: Probits;
}

/** By the standard of a kind: there are only a few. */
const untested = new Map<number, Untested>();

function untestedProbits(standard: number): Untested {
  const known = untested.get(standard);
  if (known) return known;
  // Fresh seed is better than the standard asks, how much nobody has said: from half way up.
  const least = (standard + FRESH_MOST) / 2;
  const [low, likely, high] = [least, (least + FRESH_MOST) / 2, FRESH_MOST].map((rate) =>
    insideRate(rate, ASSUMED_SEEDS),
  ) as [number, number, number];
  // It may have been old when it came: only its best is that of fresh seed.
  const old = standard / 2;
  const both = {
    fresh: probitsOf(low, likely, high),
    unknownAge: probitsOf(old, (old + high) / 2, high),
  };
  untested.set(standard, both);
  return both;
}

/** Where it lay from the start day on, in order; null where ageing in one of them is not known. */
function stretchesOf(
  lot: Lot,
  kind: Kind,
  places: StoragePlaces,
  start: number,
): readonly Stretch[] | null {
  const stays = lot.stored ?? [];
  const stretches: Stretch[] = [];
  // Before its first stay it lay nobody knows where.
  for (let at = -1; at < stays.length; at += 1) {
    const stay = stays[at];
    const next = stays[at + 1];
    const from = Math.max(start, stay?.from ?? -Infinity);
    const to = next?.from ?? (stay || !next ? Infinity : -Infinity);
    if (to <= from) continue;
    const place = stay ? placeIndex(places).get(stay.place) : undefined;
    const clock = storageClock(kind, place?.conditions ? place : null, stay?.moisturePct);
    if (!clock) return null;
    stretches.push({ from, to, clock });
  }
  return stretches;
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
