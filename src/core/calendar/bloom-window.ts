import type { DayNumber } from "../model/day.ts";

/** Whole days from first to last, both inclusive. */
export interface DayWindow {
  readonly first: DayNumber;
  readonly last: DayNumber;
}

/**
 * A predicted or observed bloom. `likely` is what to expect; `outer` runs from the earliest
 * likely first flower to the latest likely last flower and is what the checks compare.
 */
export interface Bloom {
  readonly likely: DayWindow;
  readonly outer: DayWindow;
  readonly basis: "own dates" | "days" | "heat";
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
  readonly basis: Bloom["basis"];
}

type DayRange = readonly [number, number];

/** First flower counted in days from a start (sowing or setting out); the middle is likely. */
export function firstFlowerFromDays(start: DayNumber, toFlower: DayRange): FirstFlower {
  return {
    earliest: start + toFlower[0],
    likely: start + middle(toFlower),
    latest: start + toFlower[1],
    basis: "days",
  };
}

/**
 * A window that begins `after` days past first flower and lasts `length` days: the likely one by
 * the middles, the outer one by the extremes. Ranges are [least, most] whole days, inclusive.
 */
export function bloomAfter(first: FirstFlower, after: DayRange, length: DayRange): Bloom {
  const likelyFirst = first.likely + middle(after);
  return {
    likely: { first: likelyFirst, last: likelyFirst + middle(length) - 1 },
    outer: {
      first: first.earliest + after[0],
      last: first.latest + after[1] + length[1] - 1,
    },
    basis: first.basis,
  };
}

function middle([least, most]: DayRange): number {
  return Math.round((least + most) / 2);
}

/** Bloom from the grower's own dates, taken as certain. */
export function bloomFromDates(window: DayWindow): Bloom {
  return { likely: window, outer: window, basis: "own dates" };
}
