/** A lot's germination over the years as a drawing: band, tests, standard, today. */
import type { Estimate } from "../../core/lots/estimate.ts";
import { testResult } from "../../core/lots/germination.ts";
import { civilFromDay, dayFromCivil } from "../../core/model/day.ts";
import type { Lot } from "../../core/model/plan.ts";

export interface CurveBox {
  readonly width: number;
  readonly height: number;
}

interface CurveDot {
  readonly x: number;
  readonly y: number;
  /** Ends of its 95 % interval. */
  readonly top: number;
  readonly bottom: number;
}

export interface LifeCurveMarks {
  /** Outline of the band, an SVG path; empty where nothing can be said. */
  readonly band: string;
  /** Height of the germination standard. */
  readonly standardY: number;
  readonly todayX: number;
  readonly dots: readonly CurveDot[];
  /** Where years begin, for the larger drawing. */
  readonly years: readonly { readonly year: number; readonly x: number }[];
}

/** Years shown before what is known first, and after today. */
const BEFORE_DAYS = 120;
const AHEAD_DAYS = 365 * 10;
const STEPS = 24;
/** Labelled years at most. */
const MOST_YEARS = 8;

interface CurveInput {
  readonly lot: Lot;
  readonly estimate: Estimate | null;
  /** Fraction of 1. */
  readonly standard: number;
  readonly today: number;
}

export function lifeCurve(input: CurveInput, { width, height }: CurveBox): LifeCurveMarks {
  const { lot, estimate, standard, today } = input;
  const tests = lot.tests ?? [];
  const known = [...tests.map(({ date }) => date), ...(estimate ? [estimate.startDay] : [])];
  const from = Math.min(today - 365, ...known) - BEFORE_DAYS;
  const to = Math.max(today, ...known) + AHEAD_DAYS;
  const x = (day: number) => rounded(((day - from) / (to - from)) * width);
  const y = (rate: number) => rounded((1 - rate) * height);
  return {
    band: estimate ? bandPath(estimate, to, x, y) : "",
    standardY: y(standard),
    todayX: x(today),
    dots: tests.map((test) => {
      const { rateWithHard, limitsWithHard } = testResult(test);
      const [least, most] = limitsWithHard;
      return { x: x(test.date), y: y(rateWithHard), top: y(most), bottom: y(least) };
    }),
    years: yearMarks(from, to, x),
  };
}

function bandPath(
  estimate: Estimate,
  to: number,
  x: (day: number) => number,
  y: (rate: number) => number,
): string {
  const span = to - estimate.startDay;
  const days = Array.from(
    { length: STEPS + 1 },
    (_, at) => estimate.startDay + (span * at) / STEPS,
  );
  const rates = days.map((day) => estimate.at(day));
  const upper = days.map((day, at) => `${x(day)},${y(rates[at]?.[1] ?? 0)}`);
  const lower = days.map((day, at) => `${x(day)},${y(rates[at]?.[0] ?? 0)}`).reverse();
  return `M${upper.join("L")}L${lower.join("L")}Z`;
}

function yearMarks(from: number, to: number, x: (day: number) => number) {
  const first = civilFromDay(Math.ceil(from)).year + 1;
  const last = civilFromDay(Math.floor(to)).year;
  const step = Math.max(1, Math.ceil((last - first + 1) / MOST_YEARS));
  const years = [];
  for (let year = first; year <= last; year += step) {
    years.push({ year, x: x(dayFromCivil({ year, month: 1, day: 1 })) });
  }
  return years;
}

function rounded(value: number): number {
  return Math.round(value * 10) / 10;
}
