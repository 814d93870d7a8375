/** Two blooms held against each other: days together, days between, and how safe "between" is. */
import { type Basis, weaker } from "./basis.ts";
import { type Bloom, type DayWindow, gapDays, overlapDays } from "./bloom-window.ts";
import type { DayNumber } from "../model/day.ts";

/** One counted in heat, the other in days: their windows are not on one basis. */
export function isCountedUnlike(a: Bloom, b: Bloom): boolean {
  return a.counted !== b.counted && a.counted !== "own dates" && b.counted !== "own dates";
}

/** The outer windows of a bloom as it is compared: the widest where the two are counted unlike. */
function windowsOf(bloom: Bloom, isUnlike: boolean): readonly DayWindow[] {
  const first = isUnlike ? (bloom.widest ?? bloom.outer) : bloom.outer;
  return bloom.also ? [first, ...bloom.also].sort((a, b) => a.first - b.first) : [first];
}

/** Days on which both are open, by the outer windows. */
export function daysTogether(a: Bloom, b: Bloom): number {
  const isUnlike = isCountedUnlike(a, b);
  if (!isUnlike && !a.also && !b.also) return overlapDays(a.outer, b.outer);
  let sum = 0;
  for (const one of windowsOf(a, isUnlike)) {
    for (const other of windowsOf(b, isUnlike)) sum += overlapDays(one, other);
  }
  return sum;
}

/** Whole days strictly between the two where they come nearest; 0 when they overlap. */
export function daysBetween(a: Bloom, b: Bloom): number {
  const isUnlike = isCountedUnlike(a, b);
  if (!isUnlike && !a.also && !b.also) return gapDays(a.outer, b.outer);
  let least = Infinity;
  for (const one of windowsOf(a, isUnlike)) {
    for (const other of windowsOf(b, isUnlike)) least = Math.min(least, gapDays(one, other));
  }
  return least;
}

/** Days a bloom is open in all its windows, as it is compared with another. */
export function openDays(bloom: Bloom, other: Bloom): number {
  const isUnlike = isCountedUnlike(bloom, other);
  if (!isUnlike && !bloom.also) return bloom.outer.last - bloom.outer.first + 1;
  const windows = windowsOf(bloom, isUnlike);
  return windows.reduce((sum, { first, last }) => sum + last - first + 1, 0);
}

/** How two blooms that do not meet are parted. */
export interface BloomParting {
  /** Whether the first of the two given is the earlier. */
  readonly isFirstEarlier: boolean;
  /** On what the last day of the earlier and the first day of the later rest. */
  readonly closes: Basis;
  readonly opens: Basis;
  /** The less sure of the two. */
  readonly basis: Basis;
  readonly isCountedUnlike: boolean;
  /** The last safe day: the earlier may flower up to and on it ... */
  readonly lastDay: DayNumber;
  /** ... if the later opens on this day or after: the guard days lie between. */
  readonly firstDay: DayNumber;
}

/**
 * What parts two blooms, and the days on which it would fail. The days to spare beyond the guard
 * are split between the two, the odd one to the later: as long as the earlier is over by
 * `lastDay` and the later opens no sooner than `firstDay`, at least the guard days lie between.
 */
export function bloomParting(a: Bloom, b: Bloom, guardDays: number): BloomParting {
  const isUnlike = isCountedUnlike(a, b);
  let nearest: { gap: number; isFirstEarlier: boolean; last: DayNumber; first: DayNumber } | null =
    null;
  for (const one of windowsOf(a, isUnlike)) {
    for (const other of windowsOf(b, isUnlike)) {
      const gap = gapDays(one, other);
      if (nearest && gap >= nearest.gap) continue;
      const isFirstEarlier = one.first <= other.first;
      const [early, late] = isFirstEarlier ? [one, other] : [other, one];
      nearest = { gap, isFirstEarlier, last: early.last, first: late.first };
    }
  }
  const { gap, isFirstEarlier, last } = nearest ?? {
    gap: 0,
    isFirstEarlier: true,
    last: a.outer.last,
  };
  const [early, late] = isFirstEarlier ? [a, b] : [b, a];
  const lastDay = last + Math.max(0, Math.floor((gap - guardDays) / 2));
  return {
    isFirstEarlier,
    closes: early.closes,
    opens: late.opens,
    basis: weaker(early.closes, late.opens),
    isCountedUnlike: isUnlike,
    lastDay,
    firstDay: lastDay + guardDays + 1,
  };
}
