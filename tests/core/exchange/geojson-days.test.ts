/** Days on the ground through GeoJSON and back: sown under glass, set out, cleared. */
import { expect, test } from "vitest";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { planGeojson } from "../../../src/core/exchange/plan-geojson.ts";
import { readGeojson } from "../../../src/core/exchange/read-geojson.ts";
import { book, day, trialPlan } from "../../support/trial-plan.ts";

const start = {
  method: "transplanted" as const,
  date: day("2027-05-20"),
  sownUnderGlass: day("2027-04-08"),
};
const site = { name: "Garden", upBearingDeg: 0, position: { longitude: 8, latitude: 50 } };

test("all three come back as they went out", () => {
  const plan = trialPlan(
    { p: { at: 0, kind: "tomato", start, end: day("2027-10-10") }, q: { at: 9, kind: "pea" } },
    [],
    { site },
  );
  const text = planGeojson(checkLayout(plan, "layout-1"));
  expect(text).toContain("2027-10-10");
  const read = readGeojson(JSON.parse(text), "days.geojson", book);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const [p, q] = read.value.layouts[0]?.plantings ?? [];
  expect(p).toMatchObject({ start, end: day("2027-10-10") });
  expect(q).not.toHaveProperty("end");
});
