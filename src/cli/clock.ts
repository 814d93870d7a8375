/** The moment of printing, as the files want it. */
import { type DayNumber, dayFromCivil } from "../core/model/day.ts";

/** Local date and time, `2027-03-02 09:40`. */
export function localTime(now: Date): string {
  const two = (part: number) => String(part).padStart(2, "0");
  const day = [now.getFullYear(), two(now.getMonth() + 1), two(now.getDate())].join("-");
  return `${day} ${two(now.getHours())}:${two(now.getMinutes())}`;
}

/** The day it is here. */
export function today(now: Date): DayNumber {
  return dayFromCivil({ year: now.getFullYear(), month: now.getMonth() + 1, day: now.getDate() });
}

/** UTC, `20270302T094000Z`. */
export function utcStamp(now: Date): string {
  return now.toISOString().replace(/[-:]|\.\d+/g, "");
}
