import { expect, test } from "vitest";
import { circleOf } from "../../../src/core/geometry/round.ts";
import {
  type TypedGround,
  freeLabel,
  groundForms,
  groundShape,
  setSiteOutline,
  typedSurrounding,
  usualGround,
} from "../../../src/core/edits/ground.ts";
import { layoutOf, littlePlan } from "../../support/little-plan.ts";

const typed: TypedGround = {
  what: "path",
  label: "North path",
  form: "line",
  widthM: 0.6,
  lengthM: 12,
  turnDeg: 90,
  x: 3,
  y: 4,
};

test("a line has its real width and runs along its length", () => {
  expect(groundShape(typed)).toEqual({
    shape: "rectangle",
    x: 3,
    y: 4,
    widthM: 0.6,
    lengthM: 12,
    turnDeg: 90,
  });
});

test("every form makes a shape, a round one of the diameter typed", () => {
  for (const form of groundForms) expect(groundShape({ ...typed, form })).toHaveProperty("shape");
  expect(circleOf(groundShape({ ...typed, form: "round" }))?.diameterM).toBeCloseTo(0.6, 5);
});

test("new ground has an id and a label of its own", () => {
  const made = typedSurrounding(littlePlan, layoutOf(littlePlan), typed);
  expect(made).toMatchObject({ id: "ground-1", label: "North path", what: "path" });
  expect(freeLabel(littlePlan, "Hedge")).toBe("Hedge 2");
  expect(freeLabel(littlePlan, "Fence")).toBe("Fence");
});

test("every sort has a usual width", () => {
  for (const { widthM } of Object.values(usualGround)) expect(widthM).toBeGreaterThan(0);
});

test("the site's edge is set and taken away", () => {
  const corners: [number, number][] = [
    [0, 0],
    [9, 0],
    [9, 9],
  ];
  const outline = { shape: "polygon" as const, corners };
  const next = setSiteOutline(outline, "Edge").apply(littlePlan);
  expect(next.site.outline).toEqual(outline);
  expect(setSiteOutline(undefined, "No edge").apply(next).site).toEqual(littlePlan.site);
});
