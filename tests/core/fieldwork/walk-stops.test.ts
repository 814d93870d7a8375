/** Where a walk leads. */
import { expect, test } from "vitest";
import { nearestStops, walkStops } from "../../../src/core/fieldwork/walk-stops.ts";
import type { Surrounding } from "../../../src/core/model/plan.ts";
import { trialPlan } from "../../support/trial-plan.ts";

const source = (id: string, x: number, what: Surrounding["what"] = "pollen"): Surrounding => ({
  id,
  label: `The ${id}`,
  what,
  outline: { shape: "point", x, y: 0 },
  flowering: "yes",
  cover: "none",
  ...(what === "pollen" ? { kind: "common-bean" } : {}),
});
const plan = trialPlan(
  {
    c: { at: 20, kind: "tomato" },
    a: { at: 0, kind: "common-bean" },
    b: { at: 10, kind: "lettuce" },
  },
  [source("far", 200), source("hedge", 30, "hedge"), source("near", 60), source("left", -10)],
);
const layout = plan.layouts[0];
if (!layout) throw new Error("no layout");
const stops = walkStops(plan, layout);

test("plots come in walking order, then what flowers around, each the nearest to the one before", () => {
  // From c at 20: near lies 40 off, left 30; from left, near is 70 off and far 210.
  expect(stops.map(({ id }) => id)).toEqual(["a", "b", "c", "left", "near", "far"]);
  expect(stops.map(({ code }) => code).slice(3)).toEqual(["The left", "The near", "The far"]);
});

test("the nearest stop to a place is told by the distance to its edge", () => {
  const [first, second] = nearestStops(stops, { x: 13, y: 0 });
  expect(first?.stop.id).toBe("b");
  expect(first?.distanceM).toBeCloseTo(2, 9);
  expect(second?.stop.id).toBe("c");
  expect(second?.distanceM).toBeCloseTo(7, 9);
  expect(nearestStops(stops, { x: 0.5, y: 0 })[0]?.distanceM).toBe(0);
});
