/** A forecast corrected by what was seen in the field. */
import type { Kind } from "../kinds/crop.ts";
import type { DayNumber } from "../model/day.ts";
import {
  type BloomParts,
  type Forecast,
  type RipeSeed,
  exactly,
  ripeByDays,
} from "./bloom-parts.ts";
import type { Bloom, DayWindow } from "./bloom-window.ts";
import { type SeenBloom, bloomFromSeen, withSeen } from "./seen-bloom.ts";

/**
 * The forecast corrected by the record. What was seen is the whole bloom, and where pollen and
 * stigmas keep days of their own it stands for both: wider than either, never narrower.
 */
export function forecastWithSeen(
  expected: Forecast,
  seen: SeenBloom,
  kind: Kind,
  season: DayWindow | null,
): Forecast {
  const { first, last } = seen;
  const isSeen = first !== undefined || last !== undefined;
  const before = expected.bloom;
  if (!before) {
    const whole = bloomFromSeen(seen, season);
    return whole ? { bloom: allOf(whole, first, kind, null), why: null } : expected;
  }
  const whole = withSeen(before.whole, seen);
  if (isSeen) return { bloom: allOf(whole, first, kind, before.ripe), why: null };
  const { sheds, receives, ripe } = before;
  const part = (bloom: Bloom) => (bloom === before.whole ? whole : withSeen(bloom, seen));
  return { bloom: { whole, sheds: part(sheds), receives: part(receives), ripe }, why: null };
}

function allOf(
  whole: Bloom,
  first: DayNumber | undefined,
  kind: Kind,
  before: RipeSeed | null,
): BloomParts {
  const days = kind.timing.flowerToSeed?.value;
  const ripe = first !== undefined && days ? ripeByDays(exactly(first), days) : before;
  return { whole, sheds: whole, receives: whole, ripe };
}
