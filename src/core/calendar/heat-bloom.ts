/** First flower predicted from heat: the days a requirement is met on the site's temperatures. */
import type { DayNumber } from "../model/day.ts";
import type { Basis } from "./basis.ts";
import type { FirstFlower } from "./bloom-window.ts";
import type { TemperatureOn } from "./climate.ts";
import { type HeatScale, degreeDays } from "./degree-days.ts";

export interface HeatRequirement extends HeatScale {
  /** [least, most] C-days from the start to first flower. */
  readonly cDays: readonly [number, number];
}

/** Where no winter or season ends the count: beyond this a requirement is not met in a season. */
const LONGEST_WAIT_DAYS = 400;

/**
 * First day on which the heat since the start reaches a sum, or null if it does not by the limit
 * or the temperatures run out.
 * @param limit last day that counts: frost, winter or the end of the season
 */
export function dayOfHeat(
  start: DayNumber,
  scale: HeatScale,
  sumCDays: number,
  temperatures: TemperatureOn,
  limit: DayNumber = start + LONGEST_WAIT_DAYS,
): DayNumber | null {
  const last = Math.min(limit, start + LONGEST_WAIT_DAYS);
  let sum = 0;
  for (let day = start; day <= last; day += 1) {
    const today = temperatures(day);
    if (today === null) return null;
    sum += degreeDays(scale, today.minC, today.maxC);
    if (sum >= sumCDays) return day;
  }
  return null;
}

export interface HeatEnd {
  readonly limit: DayNumber;
  /** Whether the stand dies at the limit, so that no flower can come after it. */
  readonly isDeath: boolean;
}

/**
 * First flower from a start day and a heat requirement: earliest at the least heat, latest at the
 * most, likely half way. Null when the temperatures run out or never suffice by the limit; where
 * the stand dies at the limit, one that may or may not get there flowers on it at the latest.
 */
export function firstFlowerFromHeat(
  start: DayNumber,
  requirement: HeatRequirement,
  temperatures: TemperatureOn,
  basis: Basis,
  end?: HeatEnd,
): FirstFlower | null {
  const [least, most] = requirement.cDays;
  const dayOf = (sum: number) => dayOfHeat(start, requirement, sum, temperatures, end?.limit);
  const last = end?.isDeath === true ? end.limit : null;
  const earliest = dayOf(least);
  const likely = dayOf((least + most) / 2) ?? last;
  const latest = dayOf(most) ?? last;
  if (earliest === null || likely === null || latest === null) return null;
  return { earliest, likely, latest, counted: "heat", basis };
}
