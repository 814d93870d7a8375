import ICAL from "ical.js";
import { expect, test } from "vitest";
import { isoWeek, mondayOf, weekday } from "../../../src/core/calendar/week.ts";
import { civilFromDay, isoFromDay } from "../../../src/core/model/day.ts";

// Reference: ical.js, whose week numbers follow ISO 8601 when weeks start on Monday.
test("ISO weeks and weekdays agree with a reference library over 60 years", () => {
  for (let day = 3653; day < 25_567; day += 1) {
    const { year, month, day: dayOfMonth } = civilFromDay(day);
    const time = new ICAL.Time(
      { year, month, day: dayOfMonth, isDate: true },
      ICAL.Timezone.utcTimezone,
    );
    const week = time.weekNumber(ICAL.Time.MONDAY);
    // ical.js counts Sunday as 1.
    expect(weekday(day)).toBe(((time.dayOfWeek() + 5) % 7) + 1);
    if (isoWeek(day).week !== week)
      throw new Error(`${isoFromDay(day)}: ${isoWeek(day).week}, not ${week}`);
  }
});

test.each([
  ["2026-12-31", 2026, 53],
  ["2027-01-03", 2026, 53],
  ["2027-01-04", 2027, 1],
  ["2024-12-30", 2025, 1],
])("%s lies in week %d-W%d", (iso, year, week) => {
  const day = Date.parse(iso) / 86_400_000;
  expect(isoWeek(day)).toEqual({ year, week });
  expect(weekday(mondayOf(day))).toBe(1);
});
