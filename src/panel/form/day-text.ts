/** Dates as people type them. Only forms that can be read one way are taken. */
import {
  type DayNumber,
  civilFromDay,
  dayFromCivil,
  dayFromIso,
  daysInMonth,
  monthName,
} from "../../core/model/day.ts";
import * as words from "./field-words.ts";

export type ReadDay =
  | { readonly ok: true; readonly value: DayNumber }
  | { readonly ok: false; readonly reason: string };

/** First and last day of the season a date without a year belongs to. */
export interface SeasonDays {
  readonly first: DayNumber;
  readonly last: DayNumber;
}

const DAY_FIRST = /^(\d{1,2})\.?\s+([a-z]{3,9})\.?,?(?:\s+(\d{4}))?$/i;
const MONTH_FIRST = /^([a-z]{3,9})\.?\s+(\d{1,2})(?:,?\s+(\d{4}))?$/i;

/**
 * Reads `2027-05-20`, `20 May 2027`, `May 20, 2027`, and without a year the first such day that
 * lies in the season. `06/01/2027` is refused: half the world reads it the other way round.
 */
export function readDay(text: string, season: SeasonDays): ReadDay {
  const body = text.normalize("NFKC").trim();
  const iso = dayFromIso(body);
  if (iso !== null) return { ok: true, value: iso };
  const dayFirst = DAY_FIRST.exec(body);
  const monthFirst = MONTH_FIRST.exec(body);
  const parts = dayFirst
    ? { day: dayFirst[1], month: dayFirst[2], year: dayFirst[3] }
    : { day: monthFirst?.[2], month: monthFirst?.[1], year: monthFirst?.[3] };
  const month = monthNumber(parts.month ?? "");
  if (month === null) {
    return { ok: false, reason: words.typeDate };
  }
  const day = Number(parts.day);
  if (parts.year !== undefined) return civil(Number(parts.year), month, day);
  return inSeason(season, month, day);
}

function monthNumber(word: string): number | null {
  const start = word.slice(0, 3).toLowerCase();
  for (let month = 1; month <= 12; month += 1) {
    if (start === monthName(month).toLowerCase()) return month;
  }
  return null;
}

function civil(year: number, month: number, day: number): ReadDay {
  const isReal = day >= 1 && day <= daysInMonth(year, month);
  return isReal
    ? { ok: true, value: dayFromCivil({ year, month, day }) }
    : { ok: false, reason: words.noSuchDay(`${day} ${monthName(month)} ${year}`) };
}

/** Without a year: the first that falls in the season, else the one of the season's first year. */
function inSeason(season: SeasonDays, month: number, day: number): ReadDay {
  const from = civilFromDay(season.first).year;
  const to = civilFromDay(season.last).year;
  for (let year = from; year <= to; year += 1) {
    const read = civil(year, month, day);
    if (read.ok && read.value >= season.first && read.value <= season.last) return read;
  }
  return civil(from, month, day);
}
