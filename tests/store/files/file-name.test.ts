/** File names every system takes, whatever stands in a plan. */
import * as fc from "fast-check";
import { expect, test } from "vitest";
import type { Plan } from "../../../src/core/model/plan.ts";
import { planFileName } from "../../../src/store/files/file-name.ts";
import { gardenPlan } from "../../support/garden-plan.ts";

const NOON = new Date(2026, 10, 3, 12);

function nameOf(site: string, season = "2027", layout = "Layout 1", now = NOON): string {
  const plan: Plan = { ...gardenPlan(), site: { name: site, upBearingDeg: 0 } };
  const named = { ...plan, season: { ...plan.season, name: season } };
  return planFileName(named, { id: "l", name: layout, beds: [], plantings: [] }, now);
}

test.each([
  ["Fallow End", "fallow-end-2027-layout-1-2026-11-03.json"],
  ["Gärtnerei am Öhrberg", "gärtnerei-am-öhrberg-2027-layout-1-2026-11-03.json"],
  ["田んぼ", "田んぼ-2027-layout-1-2026-11-03.json"],
  ['a/b\\c:d*e?f"g<h>i|j', "a-b-c-d-e-f-g-h-i-j-2027-layout-1-2026-11-03.json"],
  ["../../etc", "etc-2027-layout-1-2026-11-03.json"],
  ["CON", "plan-con-2027-layout-1-2026-11-03.json"],
  ["🌱", "2027-layout-1-2026-11-03.json"],
])("%s", (site, expected) => {
  expect(nameOf(site)).toBe(expected);
});

test("the day is the grower's, early and late in it", () => {
  expect(nameOf("x", "2027", "l", new Date(2027, 0, 1, 0, 5))).toContain("2027-01-01");
  expect(nameOf("x", "2027", "l", new Date(2027, 11, 31, 23, 55))).toContain("2027-12-31");
});

test("any names at all make a safe file name with its ending", () => {
  const text = fc.string({ unit: "binary", maxLength: 300 });
  fc.assert(
    fc.property(text, text, text, (site, season, layout) => {
      const name = nameOf(site, season, layout);
      expect(name).toMatch(/^[\p{L}\p{M}\p{N}-]+\.json$/u);
      expect(name).not.toMatch(/^-|^(con|prn|aux|nul|com\d|lpt\d)[-.]/);
      // A lone half of a surrogate pair would make this throw.
      expect(encodeURIComponent(name)).not.toContain("%2F");
      expect(Array.from(name).length).toBeLessThanOrEqual(140);
    }),
  );
});
