/**
 * Twelve monthly means to a smooth daily course that gives the same monthly means back: a
 * periodic cubic spline through the running total at month ends, differenced day by day (the
 * area-matching spline idea of Epstein 1991 and Rymes & Myers 2001). Evaluating one annual sine
 * or joining mid-month values by lines returns neither the means nor the extremes.
 */
import { type DayNumber, civilFromDay, dayFromCivil } from "../model/day.ts";

const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
const YEAR_DAYS = 365;

/** @param monthly 12 means, January first, any unit. @returns 365 daily values, 1 January first. */
export function dailyCourse(monthly: readonly number[]): Float64Array {
  if (monthly.length !== 12) throw new Error(`Expected 12 monthly means, got ${monthly.length}`);
  const knots = [0];
  const total = [0];
  monthly.forEach((mean, month) => {
    const days = MONTH_DAYS[month] ?? 30;
    knots.push((knots[month] ?? 0) + days);
    total.push((total[month] ?? 0) + mean * days);
  });
  const slope = (total[12] ?? 0) / YEAR_DAYS;
  const residue = total.map((value, index) => value - slope * (knots[index] ?? 0));
  residue[12] = residue[0] ?? 0;
  const spline = periodicSpline(knots, residue);
  return Float64Array.from(
    { length: YEAR_DAYS },
    (_, day) => spline(day + 1) - spline(day) + slope,
  );
}

/** Value of a 365-day course on a day; 29 February takes the mean of its neighbours. */
export function courseOn(course: Float64Array, day: DayNumber): number {
  const { month, day: dayOfMonth } = civilFromDay(day);
  if (month === 2 && dayOfMonth === 29) {
    return ((course[58] as number) + (course[59] as number)) / 2;
  }
  // Any common year numbers the days of a course.
  const index =
    dayFromCivil({ year: 2001, month, day: dayOfMonth }) -
    dayFromCivil({ year: 2001, month: 1, day: 1 });
  return course[index] as number;
}

/** Periodic cubic spline through points whose last value equals the first. */
function periodicSpline(x: readonly number[], y: readonly number[]): (at: number) => number {
  const count = x.length - 1;
  const step = Array.from({ length: count }, (_, i) => (x[i + 1] ?? 0) - (x[i] ?? 0));
  const bends = solveBends(step, y, count);
  return (at) => {
    let i = 0;
    while (i < count - 1 && at > (x[i + 1] ?? 0)) i += 1;
    const h = step[i] ?? 1;
    const left = ((x[i + 1] ?? 0) - at) / h;
    const right = (at - (x[i] ?? 0)) / h;
    const bendLeft = bends[i] ?? 0;
    const bendRight = bends[(i + 1) % count] ?? 0;
    return (
      left * (y[i] ?? 0) +
      right * (y[i + 1] ?? 0) +
      (((left ** 3 - left) * bendLeft + (right ** 3 - right) * bendRight) * h * h) / 6
    );
  };
}

/** Second derivatives at the knots: a small dense system, solved by elimination with pivoting. */
function solveBends(
  step: readonly number[],
  y: readonly number[],
  count: number,
): readonly number[] {
  const rows = Array.from({ length: count }, (_, i) => {
    const before = (i + count - 1) % count;
    const row = new Float64Array(count + 1);
    const hBefore = step[before] ?? 1;
    const h = step[i] ?? 1;
    const yBefore = i === 0 ? (y[count - 1] ?? 0) : (y[i - 1] ?? 0);
    row[before] = (row[before] ?? 0) + hBefore / 6;
    row[i] = (row[i] ?? 0) + (hBefore + h) / 3;
    row[(i + 1) % count] = (row[(i + 1) % count] ?? 0) + h / 6;
    row[count] = ((y[i + 1] ?? 0) - (y[i] ?? 0)) / h - ((y[i] ?? 0) - yBefore) / hBefore;
    return row;
  });
  for (let pivot = 0; pivot < count; pivot += 1) eliminate(rows, pivot, count);
  return rows.map((row, i) => (row[count] ?? 0) / (row[i] ?? 1));
}

function eliminate(rows: Float64Array[], pivot: number, count: number): void {
  let best = pivot;
  for (let row = pivot + 1; row < count; row += 1) {
    if (Math.abs(rows[row]?.[pivot] ?? 0) > Math.abs(rows[best]?.[pivot] ?? 0)) best = row;
  }
  const pivotRow = rows[best] as Float64Array;
  rows[best] = rows[pivot] as Float64Array;
  rows[pivot] = pivotRow;
  rows.forEach((row, index) => {
    if (index === pivot) return;
    const factor = (row[pivot] ?? 0) / (pivotRow[pivot] ?? 1);
    for (let column = pivot; column <= count; column += 1) {
      row[column] = (row[column] ?? 0) - factor * (pivotRow[column] ?? 0);
    }
  });
}
