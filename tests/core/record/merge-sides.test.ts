/** Two copies of a plan side by side, and changes of a layout itself. */
import { expect, test } from "vitest";
import type { Plan } from "../../../src/core/model/plan.ts";
import { mergePlans } from "../../../src/core/record/merge-plans.ts";
import { sidesOf } from "../../../src/core/record/merge-sides.ts";
import { day, trialPlan } from "../../support/trial-plan.ts";

const ours = trialPlan({
  p: { at: 0, kind: "common-bean", plants: 40, start: { method: "sown", date: day("2027-05-20") } },
});
const theirs: Plan = {
  ...ours,
  title: "Renamed there",
  layouts: ours.layouts.map((layout) => ({
    ...layout,
    name: "Their layout",
    plantings: layout.plantings.map((planting) => ({
      ...planting,
      plants: 38,
      start: { method: "sown" as const, date: day("2027-05-25") },
    })),
  })),
};

function differences(take: readonly string[] = []) {
  const merged = mergePlans(ours, theirs, new Set(take));
  if (!merged.ok) throw new Error("not merged");
  return merged;
}

test("each field that differs stands beside the other's, with dates as dates", () => {
  const sides = sidesOf(ours, theirs);
  const shown = differences().differences.map((each) => [each.id, sides(each)]);
  expect(Object.fromEntries(shown)).toEqual({
    title: [{ field: "title", ours: ours.title, theirs: "Renamed there" }],
    "layouts/layout-1": [{ field: "name", ours: "Layout 1", theirs: "Their layout" }],
    "layouts/layout-1/plantings/p": [
      {
        field: "start",
        ours: expect.stringContaining("2027-05-20"),
        theirs: expect.stringContaining("2027-05-25"),
      },
      { field: "plants", ours: "40", theirs: "38" },
    ].sort((a, b) => (a.field < b.field ? -1 : 1)),
  });
});

test("a layout's name is taken by itself, and nothing else comes with it", () => {
  const { plan } = differences(["layouts/layout-1"]);
  expect(plan.layouts[0]?.name).toBe("Their layout");
  expect(plan.layouts[0]?.plantings).toEqual(ours.layouts[0]?.plantings);
  expect(differences().plan).toEqual(ours);
});
