/**
 * Seasons tried: two stands held against each other in every year of the site's record of days,
 * with the sowings of this plan. What monthly normals keep apart, one warm May may bring together.
 */
import { type DayTemperatures, type TemperatureOn, recordedOn } from "../calendar/climate.ts";
import type { Bloom } from "../calendar/bloom-window.ts";
import { daysBetween, daysTogether } from "../calendar/compare-bloom.ts";
import { bloomForecast } from "../calendar/planting-bloom.ts";
import { yearsLater } from "../calendar/yearly.ts";
import type { IsolationPair } from "../checks/isolation-pair.ts";
import type { Stand } from "../checks/stand.ts";
import { type DayNumber, civilFromDay } from "../model/day.ts";
import type { Climate } from "../model/plan.ts";

/** Most days open together of a pair in conflict that still counts as nearly cleared by time. No source; our choice. */
export const NEARLY_CLEAR_DAYS = 14;
/** Days a year's record may lack of those a stand needs; they are filled by the usual. No source; our choice. */
export const MAY_LACK_DAYS = 5;
/** Fewer years say nothing about how often. */
const LEAST_YEARS = 2;

/** One year in which the two would have met, or come nearer than the guard days. */
export interface YearTried {
  readonly year: number;
  /** Days open together; 0: they did not meet. */
  readonly overlapDays: number;
  /** Whole days between; 0 where they met. */
  readonly gapDays: number;
}

export interface SeasonsTried {
  /** Years the record holds in which both could be reckoned, in order. */
  readonly tried: readonly YearTried[];
  /** Years in which one of the two had not flowered when growth ended. */
  readonly noBloom: readonly number[];
  /** Years whose record lacks too many of the days needed. */
  readonly leftOut: readonly number[];
  readonly guardDays: number;
}

/** Whether years can make a difference to a pair, and its days are near enough to ask. */
export function canTryYears(pair: IsolationPair, parent: Stand, source: Stand): boolean {
  const isCounted = countsHeat(parent.receives) || countsHeat(source.sheds);
  const isNear =
    pair.time !== null ||
    pair.standing === "time" ||
    (pair.standing === "conflict" && (pair.overlapDays ?? Infinity) <= NEARLY_CLEAR_DAYS);
  return isCounted && isNear && yearsOf(parent).length >= LEAST_YEARS;
}

function countsHeat(bloom: Bloom | null): boolean {
  return bloom?.counted === "heat";
}

/**
 * The pair in every year of the record: each planting sown on its date of this plan, heat counted
 * on the days of that year; dates typed stay as they are. Windows, guard days and frost are those
 * of the checks. Null where years make no difference: `canTryYears`.
 */
export function seasonsTried(
  pair: IsolationPair,
  parent: Stand,
  source: Stand,
): SeasonsTried | null {
  if (!canTryYears(pair, parent, source)) return null;
  const tried: YearTried[] = [];
  const noBloom: number[] = [];
  const leftOut: number[] = [];
  for (const year of yearsOf(parent)) {
    const one = inYear(parent, year);
    const other = inYear(source, year);
    if (one.isLacking || other.isLacking) leftOut.push(year);
    else if (!one.receives || !other.sheds) noBloom.push(year);
    else {
      const overlapDays = daysTogether(one.receives, other.sheds);
      const gapDays = overlapDays > 0 ? 0 : daysBetween(one.receives, other.sheds);
      tried.push({ year, overlapDays, gapDays });
    }
  }
  if (tried.length + noBloom.length < LEAST_YEARS) return null;
  return { tried, noBloom, leftOut, guardDays: pair.guardDays };
}

/** Years of the record; a season over New Year is called by the year it begins in. */
function yearsOf({ setting }: Stand): readonly number[] {
  const days = setting.climate?.days;
  if (!days || days.minC.length === 0) return [];
  const first = civilFromDay(days.first).year;
  const last = civilFromDay(days.first + days.minC.length - 1).year;
  return Array.from({ length: last - first + 1 }, (_, index) => first + index);
}

interface BloomOfYear {
  readonly receives: Bloom | null;
  readonly sheds: Bloom | null;
  /** The record lacks too many of the days that were needed. */
  readonly isLacking: boolean;
}

/** Blooms by stand and year: a stand is in many pairs. */
const known = new WeakMap<Stand, Map<number, BloomOfYear>>();

function inYear(stand: Stand, year: number): BloomOfYear {
  const years = known.get(stand) ?? new Map<number, BloomOfYear>();
  known.set(stand, years);
  const found = years.get(year);
  if (found) return found;
  const made = reckoned(stand, year);
  years.set(year, made);
  return made;
}

function reckoned(stand: Stand, year: number): BloomOfYear {
  const { planting, variety, kind, setting, season } = stand;
  const { climate, temperatures } = setting;
  // Typed dates, and what is counted in days, are the same in every year.
  const isSame = !countsHeat(stand.receives) && !countsHeat(stand.sheds);
  if (isSame || !planting || !variety || !climate?.days || !temperatures) {
    return { receives: stand.receives, sheds: stand.sheds, isLacking: false };
  }
  const lacking = new Set<DayNumber>();
  const shift = year - civilFromDay(season.first).year;
  const days = daysOfYear(climate.days, shift, temperatures, lacking);
  const { bloom } = bloomForecast(planting, variety, kind, { ...setting, temperatures: days });
  return {
    receives: bloom?.receives ?? null,
    sheds: bloom?.sheds ?? null,
    isLacking: lacking.size > MAY_LACK_DAYS,
  };
}

/** The days of this plan's season with the temperatures of the same dates, years earlier. */
function daysOfYear(
  record: NonNullable<Climate["days"]>,
  shift: number,
  usual: TemperatureOn,
  lacking: Set<DayNumber>,
): TemperatureOn {
  const read = new Map<DayNumber, DayTemperatures | null>();
  return (day) => {
    const before = read.get(day);
    if (before !== undefined) return before;
    const recorded = recordedOn(record, yearsLater(day, shift));
    if (!recorded) lacking.add(day);
    const today = recorded ?? usual(day);
    read.set(day, today);
    return today;
  };
}

/** A pair and what the years make of it. */
export interface PairOverYears {
  readonly pair: IsolationPair;
  readonly seasons: SeasonsTried;
}

/** As `seasonsTried`, of stands by their ids. */
export function seasonsOf(
  pair: IsolationPair,
  standById: ReadonlyMap<string, Stand>,
): SeasonsTried | null {
  const parent = standById.get(pair.seedParent);
  const source = standById.get(pair.pollenSource);
  return parent && source ? seasonsTried(pair, parent, source) : null;
}

/** All pairs to which the years make a difference. */
export function pairsOverYears(
  pairs: readonly IsolationPair[],
  standById: ReadonlyMap<string, Stand>,
): readonly PairOverYears[] {
  return pairs.flatMap((pair) => {
    const seasons = seasonsOf(pair, standById);
    return seasons ? [{ pair, seasons }] : [];
  });
}
