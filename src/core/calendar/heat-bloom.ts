/** First flower predicted from heat: the days a requirement is met on the site's temperatures. */
import type { DayNumber } from "../model/day.ts";
import type { FirstFlower } from "./bloom-window.ts";
import type { TemperatureOn } from "./climate.ts";
import { type HeatScale, degreeDays } from "./degree-days.ts";

export interface HeatRequirement extends HeatScale {
  /** [least, most] C-days from the start to first flower. */
  readonly cDays: readonly [number, number];
}

/** Longest wait for heat: beyond this the requirement is not met in a season. */
const LONGEST_WAIT_DAYS = 400;

/** First day on which the heat since the start reaches a sum, or null if it never does. */
export function dayOfHeat(
  start: DayNumber,
  scale: HeatScale,
  sumCDays: number,
  temperatures: TemperatureOn,
): DayNumber | null {
  let sum = 0;
  for (let day = start; day < start + LONGEST_WAIT_DAYS; day += 1) {
    const today = temperatures(day);
    if (today === null) return null;
    sum += degreeDays(scale, today.minC, today.maxC);
    if (sum >= sumCDays) return day;
  }
  return null;
}

/**
 * First flower from a start day and a heat requirement: earliest at the least heat, latest at the
 * most, likely half way. Null when the temperatures run out or never suffice.
 */
export function firstFlowerFromHeat(
  start: DayNumber,
  requirement: HeatRequirement,
  temperatures: TemperatureOn,
): FirstFlower | null {
  const [least, most] = requirement.cDays;
  const earliest = dayOfHeat(start, requirement, least, temperatures);
  const likely = dayOfHeat(start, requirement, (least + most) / 2, temperatures);
  const latest = dayOfHeat(start, requirement, most, temperatures);
  if (earliest === null || likely === null || latest === null) return null;
  return { earliest, likely, latest, basis: "heat" };
}
