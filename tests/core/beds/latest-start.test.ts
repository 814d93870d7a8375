/** A new planting starts as the latest of its kind does. */
import { expect, test } from "vitest";
import { latestStart } from "../../../src/core/beds/latest-start.ts";
import { day, layoutOf, trialPlan } from "../../support/trial-plan.ts";

test("the latest start of the kind is taken, of whatever variety, the first of equals", () => {
  const sown = (iso: string) => ({ method: "sown" as const, date: day(iso) });
  const plan = trialPlan({
    a: { at: 0, kind: "tomato", start: sown("2027-04-01") },
    b: { at: 9, kind: "tomato", start: sown("2027-05-01") },
    c: { at: 18, kind: "tomato", start: { method: "transplanted", date: day("2027-05-01") } },
    d: { at: 27, kind: "carrot", start: sown("2027-06-01") },
    e: { at: 36, kind: "beet" },
  });
  const layout = layoutOf(plan);
  expect(latestStart(plan, layout, "tomato")).toEqual(sown("2027-05-01"));
  expect(latestStart(plan, layout, "carrot")).toEqual(sown("2027-06-01"));
  expect(latestStart(plan, layout, "beet"), "none has a date").toBeUndefined();
  expect(latestStart(plan, layout, "lettuce"), "none is there").toBeUndefined();
});
