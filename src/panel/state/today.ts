import { type DayNumber, dayFromCivil } from "../../core/model/day.ts";

/** Today by the computer's clock and calendar. */
export function today(): DayNumber {
  const now = new Date();
  return dayFromCivil({ year: now.getFullYear(), month: now.getMonth() + 1, day: now.getDate() });
}
