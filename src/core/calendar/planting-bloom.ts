/** When a planting flowers: dates, else heat, else days, else unknown and why. */
import type { BloomPart, HeatToFlower, Kind, Range, Sourced } from "../kinds/crop.ts";
import { growthOf } from "../kinds/growth.ts";
import { OWN_SOURCE } from "../kinds/own-kinds.ts";
import type { DayNumber } from "../model/day.ts";
import type { Planting, Variety } from "../model/plan.ts";
import { type Basis, figureBasis } from "./basis.ts";
import {
  type Bloom,
  type DayWindow,
  type FirstFlower,
  bloomAfter,
  bloomFromDates,
  endedBy,
  hull,
} from "./bloom-window.ts";
import { countedFlower, heatEnd, notOfSpring, otherReckoning } from "./first-flower.ts";
import { type BloomSetting, frostAfter } from "./growing.ts";
import {
  type BloomParts,
  type Forecast,
  type RipeSeed,
  exactly,
  ripeByDays,
} from "./bloom-parts.ts";
import { forecastUntilEnd } from "./cleared-bloom.ts";
import { forecastWithSeen } from "./forecast-with-seen.ts";
import { dayOfHeat } from "./heat-bloom.ts";
import { seenOf } from "./seen-bloom.ts";
import { rangeOfBoth, seenBloomDays } from "./seen-seasons.ts";
import { repeatsIn } from "./yearly.ts";

/**
 * Dates are the whole bloom and stand for both its parts.
 * @param season for what flowers every year: the dates are repeated in each year that meets it
 * @param basis on what the dates rest
 */
export function partsFromDates(
  window: DayWindow,
  kind: Kind | null = null,
  season: DayWindow | null = null,
  basis: Basis = "own",
): BloomParts {
  const [first, ...also] = season ? repeatsIn(window, season) : [window];
  const once = bloomFromDates(first, basis);
  const bloom: Bloom = also.length > 0 ? { ...once, also } : once;
  const days = kind?.timing.flowerToSeed?.value;
  const ripe = days ? ripeByDays(exactly(first.first), days) : null;
  return { whole: bloom, sheds: bloom, receives: bloom, ripe };
}

/**
 * Bloom of a planting. Heat is used when the site has a climate and the variety or kind a heat
 * requirement, and the planting is sown in place; the variety's own figures go before the kind's.
 *
 * Perennials flower each year: own dates are repeated in every year of the season. What is
 * counted from a start holds for the first bloom only, so a perennial that flowers in a season
 * before or after it has no bloom here until dates are typed.
 *
 * A day of clearing ends it: see forecastUntilEnd.
 */
export function bloomForecast(
  planting: Planting,
  variety: Variety,
  kind: Kind,
  setting: BloomSetting,
): Forecast {
  const expected = expectedBloom(planting, variety, kind, setting);
  const { season } = setting;
  const seen = seenOf(planting);
  const forecast = seen ? forecastWithSeen(expected, seen, kind, season) : expected;
  if (planting.end === undefined) return forecast;
  const isSeedParent = planting.purpose === "seed" && variety.hybrid !== true;
  return forecastUntilEnd(forecast, { planting, isSeedParent, season, seen });
}

function expectedBloom(
  planting: Planting,
  variety: Variety,
  kind: Kind,
  setting: BloomSetting,
): Forecast {
  const { season } = setting;
  if (planting.bloom) {
    const yearly = kind.lifeCycle === "perennial" ? season : null;
    return { bloom: partsFromDates(planting.bloom, kind, yearly, planting.bloom.basis), why: null };
  }
  const { flower, why } = countedFlower(planting, variety, kind, setting);
  if (!planting.start || !flower) return { bloom: null, why: why ?? "no-start" };
  const length = lengthOf(variety, kind);
  if (!length) return { bloom: null, why: "no-figure" };
  const trouble = notOfSpring(flower, planting.start, kind, setting);
  if (trouble) return { bloom: null, why: trouble };
  const context: Counting = { kind, setting, start: planting.start.date, length };
  const frost = frostOf(context);
  if (frost !== null && flower.earliest > frost) return { bloom: null, why: "after-frost" };
  const other = otherReckoning(flower, planting.start, variety, kind, setting);
  const blooms = endedParts(widened(partsAfter(flower, context), other, context), frost);
  if (season && blooms.whole.outer.last < season.first) {
    const isYearly = kind.lifeCycle === "perennial";
    return { bloom: null, why: isYearly ? "later-years" : "before-season" };
  }
  if (
    season &&
    kind.lifeCycle === "perennial" &&
    season.last >= flower.earliest + NEXT_BLOOM_DAYS
  ) {
    return { bloom: null, why: "later-years" };
  }
  return { bloom: { ...blooms, ripe: ripeSeed(flower, context) }, why: null };
}

/** The bloom alone; null where none is told. */
export function plantingBloom(
  planting: Planting,
  variety: Variety,
  kind: Kind,
  setting: BloomSetting,
): BloomParts | null {
  return bloomForecast(planting, variety, kind, setting).bloom;
}

/** Days after its first flower from which a perennial may be in its next year's bloom. */
const NEXT_BLOOM_DAYS = 300;

interface BloomLength {
  readonly days: Range;
  readonly basis: Basis;
  /** Whether it is where a count was broken off, and not the end. */
  readonly isOpenEnded: boolean;
}

interface Counting {
  readonly kind: Kind;
  readonly setting: BloomSetting;
  readonly start: DayNumber;
  readonly length: BloomLength;
}

type Parts = Omit<BloomParts, "ripe">;

/** The grower's own length closes a bloom; that of an open-ended kind does not. */
function lengthOf(variety: Variety, kind: Kind): BloomLength | null {
  const length = figuredLength(variety, kind);
  const seen = seenBloomDays(variety);
  // A length seen in another season is possible in this one too.
  return length && seen ? { ...length, days: rangeOfBoth(length.days, seen) } : length;
}

function figuredLength(variety: Variety, kind: Kind): BloomLength | null {
  if (variety.bloomDays) return { days: variety.bloomDays, basis: "own", isOpenEnded: false };
  const figure = kind.timing.bloomDays;
  if (!figure) return null;
  const isOpenEnded = growthOf(kind).isOpenEnded && figure.source !== OWN_SOURCE;
  return { days: figure.value, basis: figureBasis(figure), isOpenEnded };
}

/** The frost that ends the stand, on or after its start; null: hardy, or no date given. */
function frostOf({ kind, setting, start }: Counting): DayNumber | null {
  return growthOf(kind).isTender ? frostAfter(start, setting.firstAutumnFrost) : null;
}

function partsAfter(first: FirstFlower, context: Counting): Parts {
  const { kind, length } = context;
  const closed = bloomAfter(first, [0, 0], length.days, length.basis);
  const whole = keptOpen(withHeat(closed, first, context), context);
  const part = (timing: Sourced<BloomPart> | undefined) =>
    timing
      ? bloomAfter(first, timing.value.afterFirst, timing.value.days, figureBasis(timing))
      : whole;
  const sheds = part(kind.timing.shedding);
  const receives = part(kind.timing.receptive);
  if (sheds === whole && receives === whole) return { whole, sheds, receives };
  const all: Bloom = {
    ...whole,
    likely: hull(hull(whole.likely, sheds.likely), receives.likely),
    outer: hull(hull(whole.outer, sheds.outer), receives.outer),
  };
  const isWhole = (bloom: Bloom) => (bloom === whole ? all : bloom);
  return { whole: all, sheds: isWhole(sheds), receives: isWhole(receives) };
}

/** Bloom counted in heat ends no sooner than by its heat, and no sooner than by its days. */
function withHeat(bloom: Bloom, first: FirstFlower, { kind, setting, start }: Counting): Bloom {
  const heat = kind.timing.heatOfBloom;
  if (!heat || first.counted !== "heat" || !setting.temperatures) return bloom;
  const { limit } = heatEnd(start, kind, setting);
  const most = heat.value.cDays[1];
  const last = dayOfHeat(first.latest, heat.value, most, setting.temperatures, limit) ?? limit;
  if (!Number.isFinite(last) || last <= bloom.outer.last) return bloom;
  return { ...bloom, outer: { first: bloom.outer.first, last } };
}

/** An open-ended bloom runs to the end of the season; frost is looked at afterwards. */
function keptOpen(bloom: Bloom, { length, setting, kind, start }: Counting): Bloom {
  if (!length.isOpenEnded) return bloom;
  const frost = frostOf({ length, setting, kind, start });
  const last = Math.max(bloom.outer.last, frost ?? setting.season?.last ?? bloom.outer.last);
  return {
    ...bloom,
    likely: { first: bloom.likely.first, last },
    outer: { first: bloom.outer.first, last },
    isOpenEnded: true,
  };
}

/** With the windows of the other reckoning, to be held against blooms counted that way. */
function widened(parts: Parts, other: FirstFlower | null, context: Counting): Parts {
  if (!other) return parts;
  const others = partsAfter(other, context);
  const wide = (bloom: Bloom, beside: Bloom): Bloom => ({
    ...bloom,
    widest: hull(bloom.outer, beside.outer),
  });
  return {
    whole: wide(parts.whole, others.whole),
    sheds: wide(parts.sheds, others.sheds),
    receives: wide(parts.receives, others.receives),
  };
}

function endedParts(parts: Parts, frost: DayNumber | null): Parts {
  if (frost === null) return parts;
  return {
    whole: endedBy(parts.whole, frost),
    sheds: endedBy(parts.sheds, frost),
    receives: endedBy(parts.receives, frost),
  };
}

/**
 * Ripe seed by days, and by heat as well where the bloom is counted in heat and a heat to ripe
 * seed is known: as wide as both, the middle between them likely. Where the heat is not met by
 * the end of growth it is ripe after it, if at all.
 */
function ripeSeed(first: FirstFlower, { kind, setting, start }: Counting): RipeSeed | null {
  const days = kind.timing.flowerToSeed?.value;
  const byDays = days ? ripeByDays(first, days) : null;
  const heat: Sourced<HeatToFlower> | undefined = kind.timing.heatToSeed;
  if (!heat || first.counted !== "heat" || !setting.temperatures) return byDays;
  const { limit } = heatEnd(start, kind, setting);
  const [least, most] = heat.value.cDays;
  const met = (from: DayNumber, sum: number) =>
    dayOfHeat(from, heat.value, sum, setting.temperatures ?? (() => null), limit);
  const earliest = met(first.earliest, least);
  const likely = met(first.likely, (least + most) / 2);
  const latest = met(first.latest, most);
  if (latest === null && !Number.isFinite(limit)) return byDays;
  const after = limit + 1;
  const byHeat = { earliest: earliest ?? after, likely: likely ?? after, latest: latest ?? after };
  return {
    earliest: Math.min(byHeat.earliest, byDays?.earliest ?? Infinity),
    likely: byDays ? Math.round((byHeat.likely + byDays.likely) / 2) : byHeat.likely,
    latest: Math.max(byHeat.latest, byDays?.latest ?? 0),
    ...(latest === null ? { isBeyond: true } : {}),
  };
}
