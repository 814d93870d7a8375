/** A time axis in shares of its width: whole months from the first day shown to the last. */
import {
  type DayNumber,
  civilFromDay,
  dayFromCivil,
  daysInMonth,
  monthName,
} from "../../core/model/day.ts";

export interface MonthTick {
  readonly day: DayNumber;
  /** Month name; with the year where a new one begins. */
  readonly label: string;
}

export interface TimeAxis {
  readonly first: DayNumber;
  /** Last day shown, inclusive. */
  readonly last: DayNumber;
  readonly months: readonly MonthTick[];
}

/** An axis over whole months that holds all of the days; over the season when there are none. */
export function timeAxis(
  days: readonly DayNumber[],
  season: { readonly first: DayNumber; readonly last: DayNumber },
): TimeAxis {
  const shown = days.length > 0 ? days : [season.first, season.last];
  const from = civilFromDay(Math.min(...shown));
  const to = civilFromDay(Math.max(...shown));
  const months: MonthTick[] = [];
  for (let { year, month } = from; year < to.year || (year === to.year && month <= to.month);) {
    const isNewYear = month === 1 && months.length > 0;
    months.push({
      day: dayFromCivil({ year, month, day: 1 }),
      label: isNewYear ? `${monthName(month)} ${year}` : monthName(month),
    });
    month += 1;
    if (month > 12) {
      month = 1;
      year += 1;
    }
  }
  return {
    first: dayFromCivil({ ...from, day: 1 }),
    last: dayFromCivil({ ...to, day: daysInMonth(to.year, to.month) }),
    months,
  };
}

/** Where a day begins on the axis, percent of its width. */
export function startPercent(axis: TimeAxis, day: DayNumber): number {
  return round(((day - axis.first) / axisDays(axis)) * 100);
}

/** How much of the axis the days from first to last take, both inclusive, percent. */
export function widthPercent(axis: TimeAxis, first: DayNumber, last: DayNumber): number {
  return round(((last - first + 1) / axisDays(axis)) * 100);
}

/** The middle of a day on the axis, percent. */
export function middlePercent(axis: TimeAxis, day: DayNumber): number {
  return round(startPercent(axis, day) + widthPercent(axis, day, day) / 2);
}

/** Days the axis shows. */
export function axisDays(axis: TimeAxis): number {
  return axis.last - axis.first + 1;
}

function round(percent: number): number {
  return Math.round(percent * 1000) / 1000;
}
