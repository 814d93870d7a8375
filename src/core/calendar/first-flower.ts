/** Day of first flower counted from a start: by heat, else by days, else not at all and why. */
import { OWN_SOURCE } from "../kinds/own-kinds.ts";
import { growthOf } from "../kinds/growth.ts";
import type { HeatToFlower, Kind, Range, Sourced } from "../kinds/crop.ts";
import type { DayNumber } from "../model/day.ts";
import type { Planting, Variety } from "../model/plan.ts";
import { type Basis, figureBasis } from "./basis.ts";
import { type FirstFlower, firstFlowerFromDays } from "./bloom-window.ts";
import {
  type BloomSetting,
  frostAfter,
  isRaisedForThis,
  isSpringStart,
  winterAfter,
} from "./growing.ts";
import { type HeatEnd, firstFlowerFromHeat } from "./heat-bloom.ts";
import type { WhyNoBloom } from "./no-bloom-words.ts";
import { seenToFlower } from "./seen-seasons.ts";

/** What a first flower was counted with. */
export type FlowerFigure = {
  /** Whose figure it is; the kind's comes with the id of its source. */
  readonly of: "variety" | "kind";
  readonly source: string | null;
  readonly basis: Basis;
} & (
  | { readonly by: "days"; readonly days: Range }
  | { readonly by: "heat"; readonly heat: HeatToFlower }
);

/** A first flower and the figure it rests on. */
export interface CountedFlower extends FirstFlower {
  readonly figure: FlowerFigure;
}

export type FlowerOrWhy =
  | { readonly flower: CountedFlower; readonly why: null }
  | { readonly flower: null; readonly why: WhyNoBloom };

type Start = NonNullable<Planting["start"]>;

/**
 * Counted from the start, and nothing asked of the season: see `springFlower`. Heat goes before
 * days where both are at hand, and where the heat is not met there is no first flower: days are
 * never put in its place. Own bloom dates of the planting are not looked at here.
 */
export function firstFlower(
  planting: Planting,
  variety: Variety,
  kind: Kind,
  setting: BloomSetting,
): FlowerOrWhy {
  const { start } = planting;
  if (!start) return { flower: null, why: "no-start" };
  if (kind.lifeCycle === "biennial" && isRaisedForThis(start)) {
    return { flower: null, why: "first-year" };
  }
  const heat = setting.temperatures ? heatFigure(start, variety, kind) : null;
  if (!heat || !setting.temperatures) {
    const flower = flowerByDays(start, variety, kind);
    if (flower) return { flower, why: null };
    const isFirstYear = kind.lifeCycle === "biennial" && start.method === "sown";
    return { flower: null, why: isFirstYear ? "first-year" : "no-figure" };
  }
  const end = heatEnd(start.date, kind, setting);
  const found = firstFlowerFromHeat(start.date, heat.heat, setting.temperatures, heat.basis, end);
  return found
    ? { flower: { ...found, figure: heat }, why: null }
    : { flower: null, why: "heat-not-met" };
}

/**
 * As `firstFlower`; a heat found in one place is not trusted alone: where days are known too, the
 * flower may come as early and as late as either says, and is likely half way between.
 */
export function countedFlower(
  planting: Planting,
  variety: Variety,
  kind: Kind,
  setting: BloomSetting,
): FlowerOrWhy {
  const found = reckonedFlower(planting, variety, kind, setting);
  const { flower } = found;
  const seen = planting.start && seenToFlower(variety, planting.start.method);
  if (!flower || !planting.start || !seen) return found;
  // Seen in other seasons: as early and as late as that is possible in this one too.
  const [least, most] = seen;
  const { date } = planting.start;
  const widened = {
    ...flower,
    earliest: Math.min(flower.earliest, date + least),
    latest: Math.max(flower.latest, date + most),
  };
  return { flower: widened, why: null };
}

function reckonedFlower(
  planting: Planting,
  variety: Variety,
  kind: Kind,
  setting: BloomSetting,
): FlowerOrWhy {
  const found = firstFlower(planting, variety, kind, setting);
  const { flower } = found;
  const isOnePlace = flower?.figure.by === "heat" && flower.figure.of === "kind";
  if (!flower || !planting.start || !isOnePlace || !kind.timing.heatToFlower?.onePlace)
    return found;
  const byDays = flowerByDays(planting.start, variety, kind);
  if (!byDays) return found;
  const both = {
    ...flower,
    earliest: Math.min(flower.earliest, byDays.earliest),
    likely: Math.round((flower.likely + byDays.likely) / 2),
    latest: Math.max(flower.latest, byDays.latest),
  };
  return { flower: both, why: null };
}

/** The same bloom counted the other way, days beside heat or heat beside days, where it can be. */
export function otherReckoning(
  counted: CountedFlower,
  start: Start,
  variety: Variety,
  kind: Kind,
  setting: BloomSetting,
): FirstFlower | null {
  if (counted.counted === "heat") return flowerByDays(start, variety, kind);
  const heat = start.method === "sown" ? anyHeat(variety, kind) : null;
  if (!heat || !setting.temperatures) return null;
  const end = heatEnd(start.date, kind, setting);
  return firstFlowerFromHeat(start.date, heat.heat, setting.temperatures, heat.basis, end);
}

function flowerByDays(start: Start, variety: Variety, kind: Kind): CountedFlower | null {
  const isSown = start.method === "sown";
  const own = isSown ? variety.sownToFlower : variety.transplantedToFlower;
  const ofKind = isSown ? kind.timing.sownToFlower : kind.timing.transplantedToFlower;
  const days = own ?? ofKind?.value;
  if (!days) return null;
  const basis = own || !ofKind ? "own" : figureBasis(ofKind);
  const source = own || !ofKind ? null : ofKind.source;
  const figure = { by: "days", days, of: own ? "variety" : "kind", source, basis } as const;
  return { ...firstFlowerFromDays(start.date, days, basis), figure };
}

type HeatFigure = Extract<FlowerFigure, { by: "heat" }>;

/**
 * The heat to count with: the variety's own, else the kind's - unless the grower has typed days,
 * for the variety or for the kind: those go before a published heat. Only what is sown in place.
 */
function heatFigure({ method }: Start, variety: Variety, kind: Kind): HeatFigure | null {
  if (method !== "sown") return null;
  const heat = anyHeat(variety, kind);
  if (heat === null || heat.of === "variety") return heat;
  if (variety.sownToFlower) return null;
  const isKindTyped = kind.timing.sownToFlower?.source === OWN_SOURCE;
  return isKindTyped && heat.source !== OWN_SOURCE ? null : heat;
}

function anyHeat(variety: Variety, kind: Kind): HeatFigure | null {
  if (variety.heatToFlower) {
    const heat = variety.heatToFlower;
    return { by: "heat", heat, of: "variety", source: null, basis: "own" };
  }
  const heat: Sourced<HeatToFlower> | undefined = kind.timing.heatToFlower;
  if (!heat) return null;
  const { value, source } = heat;
  return { by: "heat", heat: value, of: "kind", source, basis: figureBasis(heat) };
}

/** The last day whose heat counts: frost for tender kinds, winter, the end of the season. */
export function heatEnd(start: DayNumber, kind: Kind, setting: BloomSetting): HeatEnd {
  const { season, firstAutumnFrost, hemisphere } = setting;
  const frost = growthOf(kind).isTender ? frostAfter(start, firstAutumnFrost) : null;
  const winter = winterAfter(start, hemisphere)?.first ?? Infinity;
  const limit = Math.min(season && season.last >= start ? season.last : Infinity, winter - 1);
  return frost !== null && frost <= limit
    ? { limit: frost, isDeath: true }
    : { limit, isDeath: false };
}

/**
 * Why a counted first flower does not hold for its start; null when it does. Days and heat to
 * flower are figures of spring. A biennial flowers after a winter, so only what is set out in
 * spring counts as overwintered; hardy annuals started after midsummer stay leafy or stand until
 * spring. A figure of the variety's own that carries a start clean over the winter is trusted:
 * whoever typed it meant just that.
 */
export function notOfSpring(
  flower: CountedFlower,
  start: Start,
  kind: Kind,
  { hemisphere }: BloomSetting,
): WhyNoBloom | null {
  const winter = winterAfter(start.date, hemisphere);
  if (winter === null) return null;
  const { isTender } = growthOf(kind);
  const isOverWinter =
    !isTender &&
    flower.figure.by === "days" &&
    flower.figure.basis === "own" &&
    flower.earliest > winter.last;
  if (isOverWinter) return null;
  const isSetOut = start.method === "transplanted";
  if (kind.lifeCycle === "biennial" && isSetOut) {
    if (!isSpringStart(start.date, "setting out overwintered", hemisphere)) return "first-year";
  } else if (!isTender && !isSpringStart(start.date, "sowing", hemisphere)) {
    return kind.lifeCycle === "biennial" ? "first-year" : "autumn-start";
  }
  if (isInWinter(start.date, hemisphere)) return "autumn-start";
  return flower.latest >= winter.first ? "over-winter" : null;
}

/** Longer than a winter, so that the one that holds a day has begun within it. */
const BEFORE_WINTER_DAYS = 100;

/** A start in the dead of winter, which nothing grows from as it would in spring. */
function isInWinter(start: DayNumber, hemisphere: BloomSetting["hemisphere"]): boolean {
  const winter = winterAfter(start - BEFORE_WINTER_DAYS, hemisphere);
  return winter !== null && winter.first <= start && start <= winter.last;
}
