/** A bloom with its parts and its first ripe seed, or why none is told. */
import type { Range } from "../kinds/crop.ts";
import type { DayNumber } from "../model/day.ts";
import type { Bloom } from "./bloom-window.ts";
import type { WhyNoBloom } from "./no-bloom-words.ts";

/** The whole bloom and its two parts; they differ where tassels and silks do not open together. */
export interface BloomParts {
  readonly whole: Bloom;
  /** Pollen is shed. */
  readonly sheds: Bloom;
  /** Stigmas take pollen. */
  readonly receives: Bloom;
  /** When the first seed is ripe; null where the kind names no days. */
  readonly ripe: RipeSeed | null;
}

/** Day the first seed is ripe, with its uncertainty. */
export interface RipeSeed {
  readonly earliest: DayNumber;
  readonly likely: DayNumber;
  readonly latest: DayNumber;
  /** Whether the most heat is not reached by the end of growth: `latest` lies after it. */
  readonly isBeyond?: true;
}

/** A bloom, or why none is told. */
export type Forecast =
  | { readonly bloom: BloomParts; readonly why: null }
  | { readonly bloom: null; readonly why: WhyNoBloom };

/** Ripe seed of what opens on a day that is certain. */
export function exactly(day: DayNumber): RipeSeed {
  return { earliest: day, likely: day, latest: day };
}

/** Ripe so many days after first flower. */
export function ripeByDays(first: RipeSeed, days: Range): RipeSeed {
  return {
    earliest: first.earliest + days[0],
    likely: first.likely + Math.round((days[0] + days[1]) / 2),
    latest: first.latest + days[1],
  };
}
