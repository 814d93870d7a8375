import { describe, expect, test } from "vitest";
import { keepOutline } from "../../../src/core/outlines/drawn-outline.ts";
import { smallPlan } from "../../support/small-plan.ts";

const CORNERS = [
  { x: 20, y: 0 },
  { x: 24, y: 0 },
  { x: 24, y: 5 },
];

describe("an outline becomes", () => {
  test("a bed of the layout with the next code", () => {
    const { plan, layout } = smallPlan();
    const { edit, id } = keepOutline(plan, layout.id, "bed", CORNERS);
    const beds = edit.apply(plan).layouts[0]?.beds;
    expect(beds).toHaveLength(layout.beds.length + 1);
    expect(beds?.at(-1)).toMatchObject({ id, outline: { shape: "polygon" } });
  });

  test("the edge of the site and nothing else", () => {
    const { plan, layout } = smallPlan();
    const { edit, id } = keepOutline(plan, layout.id, "site", CORNERS);
    const after = edit.apply(plan);
    expect(id).toBeNull();
    expect(after.site.outline?.corners).toEqual([
      [20, 0],
      [24, 0],
      [24, 5],
    ]);
    expect(after.layouts).toBe(plan.layouts);
  });

  test("a fence as a line of its width", () => {
    const { plan, layout } = smallPlan();
    const { edit } = keepOutline(plan, layout.id, "fence", CORNERS.slice(0, 2));
    expect(edit.apply(plan).surroundings.at(-1)).toMatchObject({
      label: "Fence",
      outline: { shape: "rectangle", widthM: 0.1, lengthM: 4, turnDeg: 90 },
    });
  });
});
