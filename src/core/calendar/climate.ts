/**
 * Daily minimum and maximum temperatures of a site, from monthly normals or a record of days.
 * Normals give the usual course; degree-days of that course are less than the mean of degree-days
 * in cool months, so predictions there run late. Frost dates are never derived from normals.
 */
import { type DayNumber, civilFromDay } from "../model/day.ts";
import type { Climate } from "../model/plan.ts";
import { courseOn, dailyCourse } from "./daily-course.ts";

export interface DayTemperatures {
  readonly minC: number;
  readonly maxC: number;
}

/** Temperatures by day; null where nothing is known. */
export type TemperatureOn = (day: DayNumber) => DayTemperatures | null;

const known = new WeakMap<Climate, TemperatureOn>();

/**
 * Daily temperatures of a climate. A record of days falls back on normals where it has gaps and
 * beyond its ends; without normals, on the mean of what it holds for the same date in other years.
 * The courses are made once per climate object.
 */
export function temperatureOn(climate: Climate): TemperatureOn {
  const found = known.get(climate);
  if (found) return found;
  const made = readTemperatures(climate);
  known.set(climate, made);
  return made;
}

function readTemperatures({ normals, days }: Climate): TemperatureOn {
  const usual = normals ? fromNormals(normals) : days ? sameDateMeans(days) : () => null;
  return (day) => (days && recordedOn(days, day)) ?? usual(day);
}

function fromNormals(normals: NonNullable<Climate["normals"]>): TemperatureOn {
  const minimum = dailyCourse(normals.minC);
  const maximum = dailyCourse(normals.maxC);
  return (day) => ({ minC: courseOn(minimum, day), maxC: courseOn(maximum, day) });
}

type RecordedDays = NonNullable<Climate["days"]>;

/** What a record has of a day; null: nothing, or only one of the two. */
export function recordedOn(days: RecordedDays, day: DayNumber): DayTemperatures | null {
  const minC = days.minC[day - days.first];
  const maxC = days.maxC[day - days.first];
  return typeof minC === "number" && typeof maxC === "number" ? { minC, maxC } : null;
}

/** Means of all recorded days of one calendar date; 29 February may do with 28 February. */
function sameDateMeans(days: RecordedDays): TemperatureOn {
  const sums = new Map<number, { count: number; minC: number; maxC: number }>();
  for (let day = days.first; day < days.first + days.minC.length; day += 1) {
    const today = recordedOn(days, day);
    if (!today) continue;
    const sum = sums.get(dateKey(day)) ?? { count: 0, minC: 0, maxC: 0 };
    sums.set(dateKey(day), {
      count: sum.count + 1,
      minC: sum.minC + today.minC,
      maxC: sum.maxC + today.maxC,
    });
  }
  return (day) => {
    const key = dateKey(day);
    const sum = sums.get(key) ?? (key === LEAP_DAY ? sums.get(LEAP_DAY - 1) : undefined);
    return sum ? { minC: sum.minC / sum.count, maxC: sum.maxC / sum.count } : null;
  };
}

/** Month and day as one number: 29 February is 229. */
function dateKey(day: DayNumber): number {
  const { month, day: dayOfMonth } = civilFromDay(day);
  return month * 100 + dayOfMonth;
}

const LEAP_DAY = 229;
