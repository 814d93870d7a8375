/** Diseases marked on the ground, on the pages after the map. */
import { expect, test } from "vitest";
import { markLines } from "../../../src/core/map/note-items.ts";
import { day, layoutOf, squareAt, trialPlan } from "../../support/trial-plan.ts";

test("each disease in the ground is told with the beds it lies on", () => {
  const plan = trialPlan({ peas: { at: 0, kind: "pea" } }, [], {
    groundMarks: [
      { id: "m1", outline: squareAt(0.5), disease: "white-rot", seenOn: day("2020-07-01") },
      { id: "m2", outline: squareAt(90), disease: "clubroot", seenOn: day("2021-07-02") },
    ],
  });
  const beds = [
    { id: "b1", code: "A01", outline: squareAt(0) },
    { id: "b2", code: "A02", outline: squareAt(40) },
  ];
  const layout = { ...layoutOf(plan), beds };
  expect(markLines({ plan, layout })).toEqual([
    "White rot, seen 1 Jul 2020: A01. Go there last, and clean boots and tools after it.",
    "Clubroot, seen 2 Jul 2021: beside the beds. Go there last, and clean boots and tools after it.",
  ]);
  expect(markLines({ plan: { ...plan, groundMarks: [] }, layout })).toEqual([]);
});
