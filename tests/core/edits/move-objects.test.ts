import { describe, expect, test } from "vitest";
import {
  bedUnder,
  moveObjects,
  setOutline,
  turnObjects,
} from "../../../src/core/edits/move-objects.ts";
import {
  LAYOUT,
  bedOf,
  layoutOf,
  littlePlan,
  plantingOf,
  rectangle,
} from "../../support/little-plan.ts";

describe("moving a planting", () => {
  test("keeps everything else the same objects", () => {
    const next = moveObjects(LAYOUT, ["p1"], 0, 0.5).apply(littlePlan);
    expect(plantingOf(next, "p1").outline).toEqual(rectangle(0, -3.5, 1, 2));
    expect(next.varieties).toBe(littlePlan.varieties);
    expect(next.surroundings).toBe(littlePlan.surroundings);
    expect(layoutOf(next).beds).toBe(layoutOf(littlePlan).beds);
    expect(plantingOf(next, "p2")).toBe(plantingOf(littlePlan, "p2"));
    expect(plantingOf(next, "p1").code).toBe("A01-1");
  });

  test("into another bed gives it that bed and a free code there", () => {
    const next = moveObjects(LAYOUT, ["p1"], 3, 0).apply(littlePlan);
    expect(plantingOf(next, "p1")).toMatchObject({ bed: "b2", code: "A02-1" });
    const both = moveObjects(LAYOUT, ["p1", "p2"], 3, 0).apply(littlePlan);
    expect([plantingOf(both, "p1").code, plantingOf(both, "p2").code]).toEqual(["A02-1", "A02-2"]);
  });

  test("out of all beds takes the bed away and leaves the code, which counts again on a bed", () => {
    const moved = plantingOf(moveObjects(LAYOUT, ["p1"], 50, 0).apply(littlePlan), "p1");
    expect(moved).not.toHaveProperty("bed");
    expect(moved.code).toBe("A01-1");
    const off = moveObjects(LAYOUT, ["p1"], 50, 0).apply(littlePlan);
    const back = moveObjects(LAYOUT, ["p1"], -50, 0).apply(off);
    expect(plantingOf(back, "p1")).toMatchObject({ bed: "b1", code: "A01-1" });
    const other = moveObjects(LAYOUT, ["p1"], -47, 0).apply(off);
    expect(plantingOf(other, "p1")).toMatchObject({ bed: "b2", code: "A02-1" });
  });

  test("leaves a code given by hand alone", () => {
    const named = setCode("Trial 7");
    expect(plantingOf(moveObjects(LAYOUT, ["p1"], 3, 0).apply(named), "p1")).toMatchObject({
      bed: "b2",
      code: "Trial 7",
    });
  });

  function setCode(code: string) {
    const layout = layoutOf(littlePlan);
    const plantings = layout.plantings.map((each) => (each.id === "p1" ? { ...each, code } : each));
    return { ...littlePlan, layouts: [{ ...layout, plantings }] };
  }
});

describe("moving a bed", () => {
  const next = moveObjects(LAYOUT, ["b1"], 3, 1).apply(littlePlan);

  test("takes what stands in it along, even onto another bed's ground", () => {
    expect(bedOf(next, "b1").outline).toEqual(rectangle(3, 1, 1, 10));
    expect(plantingOf(next, "p1")).toMatchObject({
      bed: "b1",
      code: "A01-1",
      outline: { x: 3, y: -3 },
    });
    expect(plantingOf(next, "p3")).toBe(plantingOf(littlePlan, "p3"));
  });

  test("with its plantings selected too moves them once", () => {
    const both = moveObjects(LAYOUT, ["b1", "p1"], 3, 1).apply(littlePlan);
    expect(both).toEqual(next);
  });
});

test("surroundings move too, in every layout at once", () => {
  const next = moveObjects(LAYOUT, ["s1"], 1, 2).apply(littlePlan);
  expect(next.surroundings[0]?.outline).toEqual({ shape: "point", x: 10, y: 11 });
  expect(next.layouts).toBe(littlePlan.layouts);
});

test("moving nothing, or in a layout that is not there, is the same plan", () => {
  expect(moveObjects(LAYOUT, ["gone"], 1, 1).apply(littlePlan)).toBe(littlePlan);
  expect(moveObjects("layout-9", ["p1"], 1, 1).apply(littlePlan)).toBe(littlePlan);
});

test("a quarter turn of a bed and back is the bed again", () => {
  const centre = { x: 0, y: 0 };
  const turned = turnObjects(LAYOUT, ["b1"], centre, 90).apply(littlePlan);
  expect(bedOf(turned, "b1").outline).toMatchObject({ turnDeg: 90 });
  const moved = plantingOf(turned, "p1").outline;
  expect(moved).toMatchObject({ turnDeg: 90 });
  expect("x" in moved && moved.x).toBeCloseTo(-4, 12);
  const back = turnObjects(LAYOUT, ["b1"], centre, -90).apply(turned);
  const outline = plantingOf(back, "p1").outline;
  expect("y" in outline && outline.y).toBeCloseTo(-4, 12);
  expect(outline).toMatchObject({ turnDeg: 0 });
});

test("a new outline that lies in another bed changes the bed", () => {
  const next = setOutline(LAYOUT, "p1", rectangle(3, 0, 1, 4)).apply(littlePlan);
  expect(plantingOf(next, "p1")).toMatchObject({ bed: "b2", code: "A02-1" });
});

test("where beds overlap a planting stays with its own", () => {
  const layout = {
    ...layoutOf(littlePlan),
    beds: [...layoutOf(littlePlan).beds, { id: "b3", code: "A03", outline: rectangle(0, 0, 5, 5) }],
  };
  const middle = rectangle(0, 1, 1, 1);
  expect(bedUnder(layout, middle)?.id).toBe("b1");
  expect(bedUnder(layout, middle, "b3")?.id).toBe("b3");
  expect(bedUnder(layout, rectangle(50, 1, 1, 1), "b3")).toBeUndefined();
});
