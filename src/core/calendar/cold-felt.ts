/** How much cold a winter on the site holds, for biennials that flower after it. */
import { type DayNumber, civilFromDay, dayFromCivil } from "../model/day.ts";
import type { Climate } from "../model/plan.ts";
import type { DayWindow } from "./bloom-window.ts";
import { temperatureOn } from "./climate.ts";
import { carrotColdOfDay, onionColdOfDay, onionVernalized } from "./vernalization.ts";

/** Cold felt outdoors in a winter, by the published function of the kind. */
export type ColdFelt = {
  /** First and last day counted. */
  readonly winter: DayWindow;
} & (
  | { readonly kind: "carrot"; /** Effective cold, C-days. */ readonly cDays: number }
  | {
      readonly kind: "onion";
      /** Fully effective days of cold. */
      readonly days: number;
      /** Share of full vernalization, 0 to 1. */
      readonly share: number;
    }
);

/**
 * The six months of winter that end first in or after a season's first day: October to March,
 * south of the equator April to September. Which of the two is told from the climate.
 */
export function winterOf(seasonFirst: DayNumber, climate: Climate): DayWindow | null {
  const { year } = civilFromDay(seasonFirst);
  const meanOf = (month: number) => meanOn(dayFromCivil({ year, month, day: 15 }), climate);
  const [january, july] = [meanOf(1), meanOf(7)];
  if (january === null || july === null) return null;
  const endMonth = january <= july ? 4 : 10;
  const end = [year, year + 1]
    .map((each) => dayFromCivil({ year: each, month: endMonth, day: 1 }))
    .find((day) => day > seasonFirst) as DayNumber;
  const { year: endYear } = civilFromDay(end);
  const first =
    endMonth === 4
      ? dayFromCivil({ year: endYear - 1, month: 10, day: 1 })
      : dayFromCivil({ year: endYear, month: 4, day: 1 });
  return { first, last: end - 1 };
}

/** Cold felt by carrots or onions standing outdoors on the site; null for other kinds or unknown days. */
export function coldFelt(
  kindId: string,
  seasonFirst: DayNumber,
  climate: Climate,
): ColdFelt | null {
  const coldOfDay =
    kindId === "carrot" ? carrotColdOfDay : kindId === "onion" ? onionColdOfDay : null;
  const winter = coldOfDay && winterOf(seasonFirst, climate);
  if (!coldOfDay || !winter) return null;
  let sum = 0;
  for (let day = winter.first; day <= winter.last; day += 1) {
    const mean = meanOn(day, climate);
    if (mean === null) return null;
    sum += coldOfDay(mean);
  }
  return kindId === "carrot"
    ? { kind: "carrot", winter, cDays: sum }
    : { kind: "onion", winter, days: sum, share: onionVernalized(sum) };
}

function meanOn(day: DayNumber, climate: Climate): number | null {
  const today = temperatureOn(climate)(day);
  return today && (today.minC + today.maxC) / 2;
}
