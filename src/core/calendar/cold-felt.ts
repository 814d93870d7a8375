/** How much cold a winter on the site holds, for biennials that flower after it. */
import { type DayNumber, civilFromDay, dayFromCivil } from "../model/day.ts";
import type { Climate } from "../model/plan.ts";
import type { DayWindow } from "./bloom-window.ts";
import { temperatureOn } from "./climate.ts";
import { type ColdNeed, coldNeedOf } from "./cold-need.ts";
import { CARROT_COLD, carrotColdOfDay, onionColdOfDay, onionVernalized } from "./vernalization.ts";

/** Cold felt outdoors in a winter, by the published function of the kind, or by its published days. */
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
  | {
      readonly kind: "days";
      /** Days whose mean lies in the band that works. */
      readonly days: number;
      readonly need: ColdNeed;
    }
);

/** `partly`: the readiest plants flower, or it may do. */
export type ColdVerdict = "met" | "partly" | "not met";

/** Share of full vernalization from which an onion counts as ready, and from which as not. Ours. */
const ONION_READY = 0.9;
const ONION_UNREADY = 0.5;

/** Whether the cold felt is enough to flower. */
export function coldVerdict(felt: ColdFelt): ColdVerdict {
  const graded = (value: number, least: number, most: number): ColdVerdict =>
    value >= most ? "met" : value >= least ? "partly" : "not met";
  switch (felt.kind) {
    case "carrot":
      return graded(felt.cDays, CARROT_COLD.first, CARROT_COLD.most);
    case "onion":
      return graded(felt.share, ONION_UNREADY, ONION_READY);
    case "days":
      return graded(felt.days, ...felt.need.days);
  }
}

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

/** Cold felt by a biennial standing outdoors on the site; null where nobody published its need, or days are unknown. */
export function coldFelt(
  kindId: string,
  seasonFirst: DayNumber,
  climate: Climate,
): ColdFelt | null {
  const need = coldNeedOf(kindId);
  const coldOfDay =
    kindId === "carrot"
      ? carrotColdOfDay
      : kindId === "onion"
        ? onionColdOfDay
        : need && inBand(need.bandC);
  const winter = coldOfDay && winterOf(seasonFirst, climate);
  if (!coldOfDay || !winter) return null;
  let sum = 0;
  for (let day = winter.first; day <= winter.last; day += 1) {
    const mean = meanOn(day, climate);
    if (mean === null) return null;
    sum += coldOfDay(mean);
  }
  if (kindId === "carrot") return { kind: "carrot", winter, cDays: sum };
  if (kindId === "onion") return { kind: "onion", winter, days: sum, share: onionVernalized(sum) };
  return need ? { kind: "days", winter, days: sum, need } : null;
}

function inBand([least, most]: ColdNeed["bandC"]): (meanC: number) => number {
  return (meanC) => (meanC >= least && meanC <= most ? 1 : 0);
}

/** The lowest temperature in the days on record, C; null without such a record: means tell no cold night. */
export function coldestOnRecord(climate: Climate | undefined): number | null {
  const lows = (climate?.days?.minC ?? []).filter((low) => low !== null);
  return lows.length === 0 ? null : lows.reduce((least, low) => Math.min(least, low), Infinity);
}

function meanOn(day: DayNumber, climate: Climate): number | null {
  const today = temperatureOn(climate)(day);
  return today && (today.minC + today.maxC) / 2;
}
