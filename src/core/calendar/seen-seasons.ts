/**
 * Days to flower seen in earlier seasons, and what they do to a forecast. One season is one weather:
 * what was seen widens the range that is forecast and never narrows it, whatever that range rests
 * on. Only the grower's own range, typed or taken from several seasons, is narrower than the kind's.
 */
import type { Range } from "../kinds/crop.ts";
import type { Variety } from "../model/plan.ts";

export type StartMethod = "sown" | "transplanted";

/** Least and most of what all seasons held of a variety showed; null where none did. */
export function seenToFlower({ seen }: Pick<Variety, "seen">, method: StartMethod): Range | null {
  return unionOf(
    (seen ?? []).flatMap(({ sownToFlower, transplantedToFlower }) => {
      const days = method === "sown" ? sownToFlower : transplantedToFlower;
      return days ? [days] : [];
    }),
  );
}

export function seenBloomDays({ seen }: Pick<Variety, "seen">): Range | null {
  return unionOf((seen ?? []).flatMap(({ bloomDays }) => (bloomDays ? [bloomDays] : [])));
}

export function rangeOfBoth(a: Range, b: Range): Range {
  return [Math.min(a[0], b[0]), Math.max(a[1], b[1])];
}

/** The smallest range that holds all of them; null of none. */
export function unionOf(ranges: readonly Range[]): Range | null {
  const [first, ...others] = ranges;
  return first ? others.reduce(rangeOfBoth, first) : null;
}
