/**
 * Rows of published temperatures and degree-days kept in tests/fixtures/climate, each with its
 * source in the row: UC IPM web output and extension texts, NOAA cooperative station normals
 * compiled by the Oregon Climate Service, and published daily normals of Birmingham, Alabama.
 */
import { readFileSync } from "node:fs";
import { type BloomSetting, bloomSetting } from "../../src/core/calendar/growing.ts";
import { emptyPlan } from "../../src/core/model/empty-plan.ts";
import type { Climate } from "../../src/core/model/plan.ts";

export type Row = Readonly<Record<string, string>>;

export function climateRows(name: string): readonly Row[] {
  const text = readFileSync(new URL(`../fixtures/climate/${name}`, import.meta.url), "utf8");
  const [head = "", ...lines] = text.trimEnd().split("\n");
  const columns = head.split("\t");
  return lines.map((line) => {
    const cells = line.split("\t");
    return Object.fromEntries(columns.map((column, index) => [column, cells[index] ?? ""]));
  });
}

/** Twelve monthly means in Celsius of a station whose row ids begin with `prefix`. */
export function monthlyMeans(prefix: string, column: "tmin" | "tmax"): readonly number[] {
  return climateRows("monthly-normals.tsv")
    .filter((row) => row["kind"] === "climate_month" && row["id"]?.startsWith(`${prefix}-`))
    .map((row) => (Number(row[column]) - 32) / 1.8);
}

/** What blooms are told with where only a climate is known: no season, no frost. */
export function settingOfClimate(climate: Climate | undefined): BloomSetting {
  const plan = emptyPlan("climate", 2027);
  const site = { name: "", upBearingDeg: 0, ...(climate ? { climate } : {}) };
  return { ...bloomSetting({ ...plan, site }), season: null };
}
