import { describe, expect, test } from "vitest";
import { estimateOf } from "../../../src/core/lots/estimate.ts";
import { dayFromIso } from "../../../src/core/model/day.ts";
import type { Lot } from "../../../src/core/model/plan.ts";
import { lifeCurve } from "../../../src/panel/lots/life-curve.ts";
import { book } from "../../support/trial-plan.ts";

const BOX = { width: 200, height: 100 };
const date = dayFromIso("2027-01-18") ?? 0;
const lot: Lot = {
  id: "l",
  code: "L",
  variety: "v",
  state: "in stock",
  harvestYear: 2026,
  tests: [{ id: "t1", date, sown: 10, sprouted: 9 }],
};
const kind = book.kind("onion");
if (!kind) throw new Error("no onion");
const estimate = estimateOf(lot, kind, []);

describe("the drawing of a lot's life", () => {
  const marks = lifeCurve({ lot, estimate, standard: 0.7, today: date + 30 }, BOX);

  test("a test is a dot with its exact interval: 9 of 10 is 55.5 to 99.7 %", () => {
    // Clopper and Pearson 1934; the interval stands in most tables of exact limits.
    expect(marks.dots).toHaveLength(1);
    expect(marks.dots[0]?.y).toBeCloseTo(10, 0);
    expect(marks.dots[0]?.bottom).toBeCloseTo(44.5, 1);
    expect(marks.dots[0]?.top).toBeCloseTo(0.3, 1);
  });

  test("the standard lies at its height, and the band begins at the test", () => {
    expect(marks.standardY).toBe(30);
    expect(marks.band.startsWith(`M${marks.dots[0]?.x},`)).toBe(true);
    expect(marks.band.endsWith("Z")).toBe(true);
  });

  test("today comes after the test, within the drawing", () => {
    expect(marks.todayX).toBeGreaterThan(marks.dots[0]?.x ?? Infinity);
    expect(marks.todayX).toBeLessThan(BOX.width);
  });

  test("where nothing can be said there is no band", () => {
    const { tests: _tests, harvestYear: _year, ...bare } = lot;
    expect(lifeCurve({ lot: bare, estimate: null, standard: 0.7, today: date }, BOX).band).toBe("");
  });
});
