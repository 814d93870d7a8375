/**
 * What became of each plot of a season: whether it grew, whether it went to seed, and whether it
 * still stands. The field record goes before the plan; where a record is silent the plan is taken,
 * as ground wrongly held clean would be a false clear.
 */
import { bloomSetting } from "../calendar/growing.ts";
import type { WhyNoBloom } from "../calendar/no-bloom-words.ts";
import type { Forecast } from "../calendar/bloom-parts.ts";
import { bloomForecast } from "../calendar/planting-bloom.ts";
import type { Kind } from "../kinds/crop.ts";
import { planBook } from "../kinds/own-kinds.ts";
import { type DayNumber, civilFromDay } from "../model/day.ts";
import { layoutOf } from "../model/layouts.ts";
import type { EarlierCrop, Plan, Planting, Variety } from "../model/plan.ts";
import { asGrown, plotRecords } from "../record/as-grown.ts";
import type { PlotRecord } from "../record/plot-record.ts";
import { isStoredOverWinter } from "./stored-roots.ts";

/**
 * `over`: it is done with. `standing`: it stands over winter where it is. `lifted`: its roots or
 * plants are kept over winter, to be set out in spring. `never`: it was never sown.
 */
export const fates = ["over", "standing", "lifted", "never"] as const;
export type Fate = (typeof fates)[number];

export interface PlotFate {
  /** As grown, where something is written of it; else as planned. */
  readonly planting: Planting;
  readonly variety: Variety;
  readonly kind: Kind;
  /** What became of it, as far as record and plan tell; and what else may have. */
  readonly fate: Fate;
  readonly fates: readonly Fate[];
  readonly wentToSeed: NonNullable<EarlierCrop["wentToSeed"]>;
  /** The calendar year it was harvested in, or shed seed. */
  readonly year: number;
  /** Whether anything of its growth is written down. */
  readonly isRecorded: boolean;
}

/** @param on entries of that day and before count */
export function plotFates(plan: Plan, layoutId: string, on: DayNumber): readonly PlotFate[] {
  const book = planBook(plan);
  const setting = bloomSetting(plan);
  const records = plotRecords(plan, on);
  const varieties = new Map(plan.varieties.map((variety) => [variety.id, variety]));
  const { plantings } = layoutOf(asGrown(plan, on), layoutId);
  const isKept = isSowingKept(plantings, records) && on > plan.season.last;
  return plantings.flatMap((planting): readonly PlotFate[] => {
    const variety = varieties.get(planting.variety);
    const kind = variety && book.kind(variety.kind);
    if (!variety || !kind) return [];
    const record = records.get(planting.id) ?? null;
    const forecast = bloomForecast(planting, variety, kind, setting);
    const grown: Grown = { planting, kind, record, forecast, plan };
    const wentToSeed = seedOf(grown);
    const isRecorded = record !== null && record.entries.some(isGrowth);
    const isNever = isKept && (record === null || record.entries.length === 0);
    return [
      {
        planting,
        variety,
        kind,
        fate: isNever ? "never" : fateOf(grown, wentToSeed),
        fates: fatesOf(kind),
        wentToSeed: isNever ? "no" : wentToSeed,
        year: yearOf(grown),
        isRecorded,
      },
    ];
  });
}

interface Grown {
  readonly planting: Planting;
  readonly kind: Kind;
  readonly record: PlotRecord | null;
  readonly forecast: Forecast;
  readonly plan: Plan;
}

/** What is written of a plot that grew: a note may say anything, and neighbours are asked at a desk. */
function isGrowth({ what }: PlotRecord["entries"][number]): boolean {
  return what !== "note" && what !== "neighbour asked";
}

/**
 * Whether sowings are written down in this plan as a rule: at half of the plots at least, and at
 * every plot of which anything else is. Then a plot without a word was never sown.
 */
function isSowingKept(
  plantings: readonly Planting[],
  records: ReadonlyMap<string, PlotRecord>,
): boolean {
  const written = plantings.flatMap(({ id }) => {
    const record = records.get(id);
    return record?.entries.some(isGrowth) === true ? [record] : [];
  });
  const isStarted = ({ sownOn, setOutOn }: PlotRecord) => sownOn !== null || setOutOn !== null;
  return written.length * 2 >= plantings.length && written.every(isStarted);
}

/**
 * Whether it bore seed. `no` only for what cannot have: cut before bloom, a biennial in its first
 * year, or gone to the last plant before its first seed could be ripe. What was eaten and not cut
 * may have shed some.
 */
function seedOf(grown: Grown): PlotFate["wentToSeed"] {
  const { planting, kind, record, forecast, plan } = grown;
  const { flowering, purpose } = planting;
  const bloom = forecast.bloom;
  const goneOn = planting.end ?? lostOn(planting, record);
  if (goneOn !== null && bloom && goneOn < (bloom.ripe?.earliest ?? bloom.whole.outer.first)) {
    return "no";
  }
  if (record !== null && record.firstFlower !== null) return "yes";
  if (flowering === "cut") return "no";
  if (flowering === "first-year" && kind.lifeCycle !== "annual") return "no";
  if (isLeafy(forecast.why) && isOfSeason(planting, plan)) {
    // What is sown late stays leafy or bolts, as the autumn goes.
    return kind.lifeCycle === "biennial" ? "no" : "unknown";
  }
  return purpose === "seed" && (goneOn === null || bloom !== null) ? "yes" : "unknown";
}

/** Why a planting of this season did not flower in it. */
function isLeafy(why: WhyNoBloom | null): boolean {
  return why === "first-year" || why === "autumn-start" || why === "over-winter";
}

/** Whether it was begun in this season: what came over the last winter flowers in it. */
function isOfSeason({ start, bloom }: Planting, { season }: Plan): boolean {
  return bloom === undefined && start !== undefined && start.date >= season.first;
}

/** The day the last plant was lost or rogued; null while some stand, or were never counted. */
function lostOn({ plants }: Planting, record: PlotRecord | null): DayNumber | null {
  if (record === null || plants !== 0) return null;
  const taken = record.entries.filter(({ what }) => what === "lost" || what === "rogued");
  return taken.at(-1)?.on ?? null;
}

/** What there is to choose from. */
function fatesOf({ lifeCycle }: Kind): readonly Fate[] {
  return lifeCycle === "biennial" ? fates : fates.filter((fate) => fate !== "lifted");
}

/** What was sown so few days before the season ended stands over the winter. Ours. */
const AUTUMN_DAYS = 120;

/**
 * Perennials stand on. First-year biennials grown for seed are kept over winter, in store where
 * their roots are such as are stored; what was sown in autumn stands. All else is over, as are
 * first-year roots that are eaten.
 */
function fateOf(grown: Grown, wentToSeed: PlotFate["wentToSeed"]): Fate {
  const { planting, kind, record, forecast, plan } = grown;
  const isGone = planting.end !== undefined || lostOn(planting, record) !== null;
  if (isGone || planting.flowering === "cut") return "over";
  if (kind.lifeCycle === "perennial") return "standing";
  const { start } = planting;
  const isLate = start !== undefined && start.date > plan.season.last - AUTUMN_DAYS;
  if (kind.lifeCycle === "biennial") {
    if (wentToSeed !== "no" || planting.purpose !== "seed") return "over";
    // Roots set out in autumn, and onions sown for it, are not lifted again.
    return isStoredOverWinter(kind) && !isLate ? "lifted" : "standing";
  }
  const isUntold = isLeafy(forecast.why) || forecast.why === "no-figure";
  return isLate && isUntold ? "standing" : "over";
}

/**
 * Of its last harvest, else of its ripe seed, else of the end of its bloom, within its season.
 * Where no date tells, the year the season ended in: the later, the more careful.
 */
function yearOf({ forecast: { bloom }, record, planting, plan: { season } }: Grown): number {
  const harvests = record?.entries.filter(({ what }) => what === "harvested") ?? [];
  const day =
    harvests.at(-1)?.on ??
    planting.end ??
    bloom?.ripe?.latest ??
    bloom?.whole.outer.last ??
    season.last;
  return civilFromDay(Math.min(Math.max(day, season.first), season.last)).year;
}
