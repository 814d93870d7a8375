/** When a planting flowers: the grower's own dates, else heat, else days, else unknown. */
import type { Kind } from "../crops/crop.ts";
import type { DayNumber } from "../model/day.ts";
import type { Climate, Planting, Variety } from "../model/plan.ts";
import {
  type Bloom,
  type DayWindow,
  type FirstFlower,
  bloomAfter,
  bloomFromDates,
  firstFlowerFromDays,
} from "./bloom-window.ts";
import { temperatureOn } from "./climate.ts";
import { firstFlowerFromHeat } from "./heat-bloom.ts";

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
}

/** Own dates are the whole bloom and stand for both its parts. */
export function partsFromDates(window: DayWindow, kind?: Kind): BloomParts {
  const bloom = bloomFromDates(window);
  const first = { earliest: window.first, likely: window.first, latest: window.first };
  return { whole: bloom, sheds: bloom, receives: bloom, ripe: kind ? ripeSeed(first, kind) : null };
}

function ripeSeed(first: RipeSeed, kind: Kind): RipeSeed | null {
  const days = kind.timing.flowerToSeed?.value;
  return (
    (days && {
      earliest: first.earliest + days[0],
      likely: first.likely + Math.round((days[0] + days[1]) / 2),
      latest: first.latest + days[1],
    }) ??
    null
  );
}

/**
 * Bloom of a planting. Heat is used when the site has a climate and the variety or kind a heat
 * requirement, and the planting is sown in place; the variety's own figures go before the kind's.
 */
export function plantingBloom(
  planting: Planting,
  variety: Variety,
  kind: Kind,
  climate: Climate | undefined,
): BloomParts | null {
  if (planting.bloom) return partsFromDates(planting.bloom, kind);
  const length = variety.bloomDays ?? kind.timing.bloomDays?.value;
  const first = firstFlower(planting, variety, kind, climate);
  if (!first || !length) return null;
  const part = (which: "shedding" | "receptive") => {
    const timing = kind.timing[which]?.value;
    return timing ? bloomAfter(first, timing.afterFirst, timing.days) : whole;
  };
  const whole = bloomAfter(first, [0, 0], length);
  return {
    whole,
    sheds: part("shedding"),
    receives: part("receptive"),
    ripe: ripeSeed(first, kind),
  };
}

/** Day of first flower with its uncertainty, or null when no start or no figure is known. */
export function firstFlower(
  planting: Planting,
  variety: Variety,
  kind: Kind,
  climate: Climate | undefined,
): FirstFlower | null {
  if (!planting.start) return null;
  const { method, date } = planting.start;
  const ownDays = method === "sown" ? variety.sownToFlower : variety.transplantedToFlower;
  const heat = variety.heatToFlower ?? (ownDays ? undefined : kind.timing.heatToFlower?.value);
  if (climate && heat && method === "sown") {
    const byHeat = firstFlowerFromHeat(date, heat, temperatureOn(climate));
    if (byHeat) return byHeat;
  }
  const kindDays =
    method === "sown" ? kind.timing.sownToFlower : kind.timing.transplantedToFlower;
  const toFlower = ownDays ?? kindDays?.value;
  return toFlower ? firstFlowerFromDays(date, toFlower) : null;
}
