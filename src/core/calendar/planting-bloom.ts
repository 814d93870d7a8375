/** When a planting flowers: the grower's own dates, else heat, else days, else unknown. */
import type { HeatToFlower, Kind, Range } from "../kinds/crop.ts";
import { OWN_SOURCE } from "../kinds/own-kinds.ts";
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
import { repeatedInto } from "./yearly.ts";

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

/** What a first flower was counted with. */
export type FlowerFigure = {
  /** Whose figure it is; the kind's comes with the id of its source. */
  readonly of: "variety" | "kind";
  readonly source: string | null;
} & (
  | { readonly by: "days"; readonly days: Range }
  | { readonly by: "heat"; readonly heat: HeatToFlower }
);

/** A first flower and the figure it rests on. */
export interface CountedFlower extends FirstFlower {
  readonly figure: FlowerFigure;
}

/** Own dates are the whole bloom and stand for both its parts. */
export function partsFromDates(window: DayWindow, kind?: Kind): BloomParts {
  const bloom = bloomFromDates(window);
  const first = { earliest: window.first, likely: window.first, latest: window.first };
  return { whole: bloom, sheds: bloom, receives: bloom, ripe: kind ? ripeSeed(first, kind) : null };
}

function ripeSeed(first: RipeSeed, kind: Kind): RipeSeed | null {
  const days = kind.timing.flowerToSeed?.value;
  if (!days) return null;
  return {
    earliest: first.earliest + days[0],
    likely: first.likely + Math.round((days[0] + days[1]) / 2),
    latest: first.latest + days[1],
  };
}

/**
 * Bloom of a planting. Heat is used when the site has a climate and the variety or kind a heat
 * requirement, and the planting is sown in place; the variety's own figures go before the kind's.
 *
 * Perennials flower each year: own dates from another year are taken over into the season. What
 * is counted from a start holds for the first bloom only, so a perennial that began flowering
 * before the season has no bloom here until dates are typed.
 * @param season left out: perennials are treated like annuals
 */
export function plantingBloom(
  planting: Planting,
  variety: Variety,
  kind: Kind,
  climate: Climate | undefined,
  season?: DayWindow,
): BloomParts | null {
  const yearly = kind.lifeCycle === "perennial" ? season : undefined;
  if (planting.bloom) {
    return partsFromDates(yearly ? repeatedInto(planting.bloom, yearly) : planting.bloom, kind);
  }
  const length = variety.bloomDays ?? kind.timing.bloomDays?.value;
  const first = firstFlower(planting, variety, kind, climate);
  if (!first || !length) return null;
  const whole = bloomAfter(first, [0, 0], length);
  if (yearly && whole.outer.last < yearly.first) return null;
  const part = (which: "shedding" | "receptive") => {
    const timing = kind.timing[which]?.value;
    return timing ? bloomAfter(first, timing.afterFirst, timing.days) : whole;
  };
  return {
    whole,
    sheds: part("shedding"),
    receives: part("receptive"),
    ripe: ripeSeed(first, kind),
  };
}

/**
 * Day of first flower with its uncertainty and what it was counted with, or null when no start or
 * no figure is known. Own bloom dates of the planting are not looked at here.
 */
export function firstFlower(
  planting: Planting,
  variety: Variety,
  kind: Kind,
  climate: Climate | undefined,
): CountedFlower | null {
  if (!planting.start) return null;
  const { method, date } = planting.start;
  const isSown = method === "sown";
  const ownDays = isSown ? variety.sownToFlower : variety.transplantedToFlower;
  const heat = isSown ? heatFigure(variety, kind, ownDays !== undefined) : null;
  const byHeat =
    climate && heat ? firstFlowerFromHeat(date, heat.heat, temperatureOn(climate)) : null;
  if (byHeat && heat) return { ...byHeat, figure: heat };
  if (ownDays) {
    const figure = { by: "days", days: ownDays, of: "variety", source: null } as const;
    return { ...firstFlowerFromDays(date, ownDays), figure };
  }
  const days = isSown ? kind.timing.sownToFlower : kind.timing.transplantedToFlower;
  if (!days) return null;
  const figure = { by: "days", days: days.value, of: "kind", source: days.source } as const;
  return { ...firstFlowerFromDays(date, days.value), figure };
}

/**
 * The heat to count with: the variety's own, else the kind's - unless the grower has typed days,
 * for the variety or for the kind: those go before a published heat.
 */
function heatFigure(
  variety: Variety,
  kind: Kind,
  hasOwnDays: boolean,
): Extract<FlowerFigure, { by: "heat" }> | null {
  if (variety.heatToFlower) {
    return { by: "heat", heat: variety.heatToFlower, of: "variety", source: null };
  }
  const heat = kind.timing.heatToFlower;
  if (!heat || hasOwnDays) return null;
  const isKindTyped = kind.timing.sownToFlower?.source === OWN_SOURCE;
  if (isKindTyped && heat.source !== OWN_SOURCE) return null;
  return { by: "heat", heat: heat.value, of: "kind", source: heat.source };
}
