/** A predicted bloom corrected by what was seen in the field. */
import type { DayNumber } from "../model/day.ts";
import type { Planting, Surrounding } from "../model/plan.ts";
import { type Bloom, type DayWindow, bloomFromDates } from "./bloom-window.ts";

/** What the record says of one bloom. */
export interface SeenBloom {
  /** Days of first and last open flower seen; left out: not seen yet. */
  readonly first?: DayNumber;
  readonly last?: DayNumber;
  /** The last day it was looked at; without a first flower none was open until then. */
  readonly lookedAt?: DayNumber;
  /** The day its ground was cleared; left out: not written down. */
  readonly cleared?: DayNumber;
  /** The day it is looked back from: what was not seen to end goes on at least until then. */
  readonly on: DayNumber;
}

/** A planting or surrounding as grown. Never part of a plan file. */
export type AsGrown<T extends Planting | Surrounding> = T & { readonly seen?: SeenBloom };

/** What was seen of its bloom, where the plan is read as grown. */
export function seenOf(thing: AsGrown<Planting> | AsGrown<Surrounding>): SeenBloom | null {
  return thing.seen ?? null;
}

/**
 * The bloom with what was seen; an end not seen keeps its prediction. One that opened later than
 * likely closes later by as much, one that opened early closes no earlier than predicted. One not
 * seen to open may have opened since it was last looked at, so its first day moves no farther than
 * the day after; one not seen to close goes on at least until `on`.
 */
export function withSeen(bloom: Bloom, seen: SeenBloom): Bloom {
  const { first, last, lookedAt, on } = seen;
  const isOpen = first !== undefined;
  const isOver = last !== undefined;
  const lateDays = isOpen ? Math.max(0, first - bloom.likely.first) : 0;
  const corrected = (window: DayWindow): DayWindow => {
    const from = isOpen ? first : Math.max(window.first, (lookedAt ?? -Infinity) + 1);
    const to = isOver ? last : Math.max(window.last + lateDays, on, from);
    return { first: Math.min(from, to), last: to };
  };
  const { widest, ...rest } = bloom;
  return {
    ...rest,
    likely: corrected(bloom.likely),
    outer: corrected(bloom.outer),
    opens: isOpen ? "seen" : bloom.opens,
    closes: isOver ? "seen" : bloom.closes,
    // Two reckonings differ only in what was not seen.
    ...(widest && !(isOpen && isOver) ? { widest: corrected(widest) } : {}),
  };
}

/**
 * A bloom known from the record alone, nothing having been predicted: null until a first flower is
 * seen, and without a last one open to the end of the season.
 */
export function bloomFromSeen(seen: SeenBloom, season: DayWindow | null): Bloom | null {
  const { first, last, on } = seen;
  if (first === undefined) return null;
  if (last !== undefined) return bloomFromDates({ first: Math.min(first, last), last }, "seen");
  const end = Math.max(on, first, season?.last ?? on);
  return {
    ...bloomFromDates({ first, last: end }, "seen"),
    closes: "rule of thumb",
    isOpenEnded: true,
  };
}
