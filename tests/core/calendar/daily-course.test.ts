import { expect, test } from "vitest";
import { courseOn, dailyCourse } from "../../../src/core/calendar/daily-course.ts";
import { dayFromIso } from "../../../src/core/model/day.ts";
import { climateRows, monthlyMeans } from "../../support/climate-rows.ts";

const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

test.each(["medford", "prospect", "drain", "oo", "whitehorse"])(
  "the daily course of %s gives its monthly means back",
  (station) => {
    for (const column of ["tmin", "tmax"] as const) {
      const means = monthlyMeans(station, column);
      const course = dailyCourse(means);
      let from = 0;
      means.forEach((mean, month) => {
        const days = MONTH_DAYS[month] ?? 0;
        const sum = course.slice(from, from + days).reduce((total, value) => total + value, 0);
        expect(sum / days).toBeCloseTo(mean, 9);
        from += days;
      });
    }
  },
);

// Published daily normals (1981-2010) of Birmingham, Alabama, against its twelve monthly means.
test("daily normals of Birmingham come out within 0.2 F", () => {
  const course = dailyCourse(monthlyMeans("birmingham", "tmin"));
  const checks = climateRows("monthly-normals.tsv").filter(
    (row) => row["kind"] === "daily_normal_check",
  );
  const published: readonly (readonly [string, number])[] = [
    ["2001-05-01", 55],
    ["2001-09-23", 62],
    ["2001-10-07", 56],
    ["2001-12-06", 38],
  ];
  expect(checks.length).toBe(published.length);
  for (const [iso, fahrenheit] of published) {
    const value = courseOn(course, dayFromIso(iso) ?? 0) * 1.8 + 32;
    expect(Math.abs(value - fahrenheit)).toBeLessThanOrEqual(0.2);
  }
});

test("29 February lies between its neighbours", () => {
  const course = dailyCourse(monthlyMeans("medford", "tmin"));
  const value = courseOn(course, dayFromIso("2028-02-29") ?? 0);
  expect(value).toBeGreaterThanOrEqual(Math.min(course[58] ?? 0, course[59] ?? 0));
  expect(value).toBeLessThanOrEqual(Math.max(course[58] ?? 0, course[59] ?? 0));
});
