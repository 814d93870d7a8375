/**
 * Daily minimum and maximum temperatures of a site, from monthly normals or a record of days.
 * Normals give the usual course; degree-days of that course are less than the mean of degree-days
 * in cool months, so predictions there run late. Frost dates are never derived from normals.
 */
import type { DayNumber } from "../model/day.ts";
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
 * Daily temperatures of a climate. A record of days falls back on normals where it has gaps. The
 * courses are made once per climate object.
 */
export function temperatureOn(climate: Climate): TemperatureOn {
  const found = known.get(climate);
  if (found) return found;
  const made = readTemperatures(climate);
  known.set(climate, made);
  return made;
}

function readTemperatures(climate: Climate): TemperatureOn {
  const normal = climate.normals
    ? { min: dailyCourse(climate.normals.minC), max: dailyCourse(climate.normals.maxC) }
    : null;
  const days = climate.days;
  return (day) => {
    const index = days ? day - days.first : -1;
    const minC = days?.minC[index];
    const maxC = days?.maxC[index];
    if (typeof minC === "number" && typeof maxC === "number") return { minC, maxC };
    return normal && { minC: courseOn(normal.min, day), maxC: courseOn(normal.max, day) };
  };
}
