import { describe, expect, test } from "vitest";
import { temperatureOn } from "../../../src/core/calendar/climate.ts";
import { dayOfHeat } from "../../../src/core/calendar/heat-bloom.ts";
import type { HeatScale } from "../../../src/core/calendar/degree-days.ts";
import { dayFromIso } from "../../../src/core/model/day.ts";
import { monthlyMeans } from "../../support/climate-rows.ts";

const CORN: HeatScale = { method: "modified average", baseC: 10, capC: 30 };
/** Planting to silk of a mid-season maize: 1200 F-days (HPRCC) and 115 to emergence (Purdue). */
const SILK_CDAYS = 1315 / 1.8;

const temperatures = temperatureOn({
  normals: {
    minC: [...monthlyMeans("medford", "tmin")],
    maxC: [...monthlyMeans("medford", "tmax")],
  },
});

function silkDay(planted: string): number {
  const day = dayOfHeat(dayFromIso(planted) ?? 0, CORN, SILK_CDAYS, temperatures);
  if (day === null) throw new Error("no silk");
  return day;
}

// Medford normals 1971-2000, NOAA cooperative station, Oregon Climate Service.
describe("maize planted two weeks apart does not silk two weeks apart", () => {
  test("14-day steps from 20 April shrink to 6, 8, 9 and 10 days", () => {
    const planted = ["2027-04-20", "2027-05-04", "2027-05-18", "2027-06-01", "2027-06-15"];
    const silks = planted.map(silkDay);
    const gaps = silks.slice(1).map((day, index) => day - (silks[index] ?? 0));
    gaps.forEach((gap, index) =>
      expect(Math.abs(gap - ([6, 8, 9, 10][index] ?? 0))).toBeLessThanOrEqual(1),
    );
  });

  // Nielsen & Thomison 2003: 75, 66 and 61 days from planting to silk for early, mid and late
  // planting in the eastern corn belt. Medford is cooler in spring, so the shape is checked.
  test("days from planting to silk fall the later it is planted, as published", () => {
    const early = silkDay("2027-05-02") - (dayFromIso("2027-05-02") ?? 0);
    const mid = silkDay("2027-05-26") - (dayFromIso("2027-05-26") ?? 0);
    const late = silkDay("2027-06-12") - (dayFromIso("2027-06-12") ?? 0);
    expect(early).toBeGreaterThan(mid);
    expect(mid).toBeGreaterThan(late);
    expect(early / mid).toBeCloseTo(75 / 66, 1);
    expect(mid / late).toBeCloseTo(66 / 61, 1);
  });
});
