/**
 * A bloom that clearing the ground cuts short, or that never comes for it. A day of clearing is a
 * plan: what it ends rests on that plan, and clears no pair in silence.
 */
import type { DayNumber } from "../model/day.ts";
import type { Planting } from "../model/plan.ts";
import type { Basis } from "./basis.ts";
import type { Forecast, RipeSeed } from "./bloom-parts.ts";
import { type Bloom, type DayWindow, endedBy } from "./bloom-window.ts";
import { endOf } from "./ground-time.ts";
import type { SeenBloom } from "./seen-bloom.ts";

/**
 * Cleared so many days before its earliest first flower, a planting sheds nothing: as sure as the
 * flower is told, and on a rule of thumb. Ours.
 */
const AHEAD_DAYS: Readonly<Record<"sure" | "rule of thumb", number>> = {
  sure: 7,
  "rule of thumb": 14,
};

export interface Clearing {
  readonly planting: Planting;
  /** Whether seed of it is kept. */
  readonly isSeedParent: boolean;
  readonly season: DayWindow | null;
  /** What the record says, where the plan is read as grown. */
  readonly seen: SeenBloom | null;
}

/**
 * The forecast of what is cleared on a day. Nothing is cut by an end before the start or before
 * the season, which are slips; nor by one before the seed of a seed parent is ripe at the latest:
 * whoever wants the seed will leave it. What is not told at all stays so.
 */
export function forecastUntilEnd(forecast: Forecast, clearing: Clearing): Forecast {
  const end = clearingDay(clearing);
  const { bloom } = forecast;
  if (end === null || bloom === null) return forecast;
  if (clearing.isSeedParent && !isRipeBy(bloom.ripe, end)) return forecast;
  if (isAheadOfBloom(bloom.whole, end)) return { bloom: null, why: "cleared" };
  const basis: Basis = clearing.seen?.cleared === undefined ? "planned end" : "seen";
  const cut = (part: Bloom) => cutBloom(part, end, basis);
  const whole = cut(bloom.whole);
  const part = (one: Bloom) => (one === bloom.whole ? whole : cut(one));
  return {
    bloom: { ...bloom, whole, sheds: part(bloom.sheds), receives: part(bloom.receives) },
    why: null,
  };
}

/** The day that ends it, no sooner than a flower was seen; null: none that counts. */
function clearingDay({ planting, season, seen }: Clearing): DayNumber | null {
  const end = endOf(planting);
  if (end === null || (season !== null && end < season.first)) return null;
  return Math.max(end, seen?.first ?? -Infinity, seen?.last ?? -Infinity);
}

/** Whether the seed is ripe by a day, at the latest; not known: no. */
export function isRipeBy(ripe: RipeSeed | null, day: DayNumber): boolean {
  return ripe !== null && ripe.isBeyond !== true && ripe.latest <= day;
}

function isAheadOfBloom(bloom: Bloom, end: DayNumber): boolean {
  const firsts = windowsOf(bloom).map(({ first }) => first);
  const isSure = bloom.opens !== "rule of thumb";
  // Dates the grower has typed, or flowers seen, need no margin.
  const ahead = bloom.counted === "own dates" ? 1 : AHEAD_DAYS[isSure ? "sure" : "rule of thumb"];
  return end <= Math.min(...firsts) - ahead;
}

function windowsOf({ outer, widest, also }: Bloom): readonly DayWindow[] {
  return [outer, ...(widest ? [widest] : []), ...(also ?? [])];
}

function cutBloom(bloom: Bloom, end: DayNumber, basis: Basis): Bloom {
  const lasts = windowsOf(bloom).map(({ last }) => last);
  if (Math.max(...lasts) <= end) return bloom;
  const { also, isOpenEnded: _, ...rest } = endedBy(bloom, end);
  const others = (also ?? [])
    .filter(({ first }) => first <= end)
    .map(({ first, last }) => ({ first, last: Math.min(last, end) }));
  return { ...rest, closes: basis, ...(others.length > 0 ? { also: others } : {}) };
}
