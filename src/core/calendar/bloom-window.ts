import type { DayNumber } from "../model/day.ts";
import { type Basis, weaker } from "./basis.ts";

/** Whole days from first to last, both inclusive. */
export interface DayWindow {
  readonly first: DayNumber;
  readonly last: DayNumber;
}

/** How a window was told. */
export type Counted = "own dates" | "days" | "heat";

/**
 * A predicted or observed bloom. `likely` is what to expect; `outer` runs from the earliest
 * likely first flower to the latest likely last flower and is what the checks compare.
 */
export interface Bloom {
  readonly likely: DayWindow;
  readonly outer: DayWindow;
  readonly counted: Counted;
  /** On what the first and the last day rest. */
  readonly opens: Basis;
  readonly closes: Basis;
  /** Further outer windows, in order: other years of a perennial. */
  readonly also?: readonly DayWindow[];
  /**
   * The outer window and the same bloom reckoned the other way, heat beside days, as one: what
   * a bloom counted the other way is compared with. Absent: there is no other reckoning.
   */
  readonly widest?: DayWindow;
  /** Flowers until something ends it; the last day is the frost or the end of the season. */
  readonly isOpenEnded?: true;
}

/** On what a window as a whole rests: the less sure of its two ends. */
export function bloomBasis(bloom: Bloom): Basis {
  return weaker(bloom.opens, bloom.closes);
}

/** Days both windows share: min(last) - max(first) + 1 when positive, else 0. */
export function overlapDays(a: DayWindow, b: DayWindow): number {
  return Math.max(0, Math.min(a.last, b.last) - Math.max(a.first, b.first) + 1);
}

/** Whole days strictly between two windows that do not overlap (adjacent windows: 0); 0 when they overlap. */
export function gapDays(a: DayWindow, b: DayWindow): number {
  return Math.max(0, Math.max(a.first, b.first) - Math.min(a.last, b.last) - 1);
}

/** The day of first flower with its uncertainty. */
export interface FirstFlower {
  readonly earliest: DayNumber;
  readonly likely: DayNumber;
  readonly latest: DayNumber;
  readonly counted: Counted;
  readonly basis: Basis;
}

type DayRange = readonly [number, number];

/** First flower counted in days from a start (sowing or setting out); the middle is likely. */
export function firstFlowerFromDays(
  start: DayNumber,
  toFlower: DayRange,
  basis: Basis,
): FirstFlower {
  return {
    earliest: start + toFlower[0],
    likely: start + middle(toFlower),
    latest: start + toFlower[1],
    counted: "days",
    basis,
  };
}

/**
 * A window that begins `after` days past first flower and lasts `length` days: the likely one by
 * the middles, the outer one by the extremes. Ranges are [least, most] whole days, inclusive.
 * @param basis on what `after` and `length` rest
 */
export function bloomAfter(
  first: FirstFlower,
  after: DayRange,
  length: DayRange,
  basis: Basis,
): Bloom {
  const likelyFirst = first.likely + middle(after);
  return {
    likely: { first: likelyFirst, last: likelyFirst + middle(length) - 1 },
    outer: {
      first: first.earliest + after[0],
      last: first.latest + after[1] + length[1] - 1,
    },
    counted: first.counted,
    opens: first.basis,
    closes: weaker(first.basis, basis),
  };
}

function middle([least, most]: DayRange): number {
  return Math.round((least + most) / 2);
}

/** Bloom from dates: the grower's own, seen this season, or a forecast read from a file. */
export function bloomFromDates({ first, last }: DayWindow, basis: Basis = "own"): Bloom {
  const window = { first, last };
  return { likely: window, outer: window, counted: "own dates", opens: basis, closes: basis };
}

/** The smallest window that holds both. */
export function hull(a: DayWindow, b: DayWindow): DayWindow {
  return { first: Math.min(a.first, b.first), last: Math.max(a.last, b.last) };
}

/** A bloom that nothing outlives: both its windows end on a day at the latest. */
export function endedBy(bloom: Bloom, day: DayNumber): Bloom {
  if (bloom.outer.last <= day && (bloom.widest?.last ?? day) <= day) return bloom;
  const cut = ({ first, last }: DayWindow) => ({
    first: Math.min(first, day),
    last: Math.min(last, day),
  });
  return {
    ...bloom,
    likely: cut(bloom.likely),
    outer: cut(bloom.outer),
    ...(bloom.widest ? { widest: cut(bloom.widest) } : {}),
  };
}
