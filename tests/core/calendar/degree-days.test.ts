import { describe, expect, test } from "vitest";
import {
  celsiusFromFahrenheit,
  degreeDays,
  type HeatScale,
} from "../../../src/core/calendar/degree-days.ts";
import { climateRows } from "../../support/climate-rows.ts";

const METHODS: Readonly<Record<string, HeatScale["method"]>> = {
  "single sine, horizontal cutoff": "single sine",
  "single triangle, horizontal cutoff": "single triangle",
  "modified average 86/50 (both extremes clamped)": "modified average",
  "simple average": "simple average",
};

// Published outputs: UC IPM degree-day calculator, trench-project unit tests, extension texts.
describe("published degree-days come out to the rounding they are printed with", () => {
  const rows = climateRows("degree-day-checks.tsv");
  test("all rows are there", () => expect(rows.length).toBe(76));
  test.each(rows.map((row) => [row["id"] ?? "", row] as const))("%s", (_id, row) => {
    const isF = row["temp_unit"] === "F";
    const celsius = (text: string) => (isF ? celsiusFromFahrenheit(Number(text)) : Number(text));
    const method = METHODS[row["stage_or_method"] ?? ""];
    if (!method) throw new Error(`unknown method in row ${row["id"]}`);
    const scale: HeatScale = {
      method,
      baseC: celsius(row["lower"] ?? ""),
      capC: row["upper"] === "" ? null : celsius(row["upper"] ?? ""),
    };
    const value = degreeDays(scale, celsius(row["tmin"] ?? ""), celsius(row["tmax"] ?? ""));
    expect(Math.abs(value * (isF ? 1.8 : 1) - Number(row["value"]))).toBeLessThanOrEqual(0.0051);
  });
});

test("a day whose extremes are alike is counted without dividing by nothing", () => {
  for (const method of ["single sine", "single triangle"] as const) {
    expect(degreeDays({ method, baseC: 10, capC: 30 }, 15, 15)).toBe(5);
    expect(degreeDays({ method, baseC: 10, capC: 30 }, 10, 10)).toBe(0);
  }
});
