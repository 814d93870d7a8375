/** Medford's course of 1971-2000 against values computed by independent code. */
import { expect, test } from "vitest";
import { temperatureOn } from "../../../src/core/calendar/climate.ts";
import {
  type HeatScale,
  celsiusFromFahrenheit,
  degreeDays,
  fahrenheitFromCelsius,
} from "../../../src/core/calendar/degree-days.ts";
import { dayFromIso } from "../../../src/core/model/day.ts";
import { monthlyMeans } from "../../support/climate-rows.ts";

const day = (iso: string): number => dayFromIso(iso) ?? Number.NaN;
const on = temperatureOn({
  normals: { minC: monthlyMeans("medford", "tmin"), maxC: monthlyMeans("medford", "tmax") },
});

test.each([
  ["2027-01-01", 44.84, 30.05],
  ["2027-04-15", 64.02, 37.35],
  ["2027-05-01", 68.05, 39.58],
  ["2027-07-01", 84.8, 50],
  ["2027-07-20", 88.9, 51.84],
  ["2027-10-01", 74.3, 40.27],
])("on %s the usual day is %d over %d F", (iso, high, low) => {
  const today = on(day(iso));
  expect(fahrenheitFromCelsius(today?.maxC ?? 0)).toBeCloseTo(high, 1);
  expect(fahrenheitFromCelsius(today?.minC ?? 0)).toBeCloseTo(low, 1);
});

const baseC = celsiusFromFahrenheit(50);
const capC = celsiusFromFahrenheit(86);
test.each<[HeatScale, number]>([
  [{ method: "modified average", baseC, capC }, 2858.7],
  [{ method: "single sine", baseC, capC }, 2597],
  [{ method: "simple average", baseC, capC: null }, 2300.1],
])("from April to October heat differs by method alone: %o", (scale, fahrenheitDays) => {
  let sum = 0;
  for (let each = day("2027-04-01"); each <= day("2027-10-31"); each += 1) {
    const today = on(each);
    sum += degreeDays(scale, today?.minC ?? 0, today?.maxC ?? 0);
  }
  expect(Math.abs(sum * 1.8 - fahrenheitDays)).toBeLessThan(0.06);
});
