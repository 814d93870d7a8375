import { describe, expect, test } from "vitest";
import {
  LEAST_SIDE_M,
  ownFrame,
  resizedRectangle,
} from "../../../src/canvas/tools/resize-rectangle.ts";
import { outOfFrame } from "../../../src/canvas/snap/snap.ts";
import { rectangleCorners } from "../../../src/core/geometry/outline.ts";
import { rectangle } from "../../support/drawn-plan.ts";

const shape = rectangle(5, 5, 1.2, 6, 30);
const frame = ownFrame(shape);
const place = (across: number, along: number) => outOfFrame(frame, { x: across, y: along });
const none = { lines: { x: [], y: [] }, reachM: 0.2, stepM: 0.1 };

test("the far edge moves and the near one stays", () => {
  const { shape: next } = resizedRectangle(
    shape,
    { across: 0, along: 1 },
    place(9, 4),
    null,
    false,
  );
  expect(next.lengthM).toBeCloseTo(7);
  expect(next.widthM).toBe(1.2);
  expect(next.turnDeg).toBe(30);
  const [before, after] = [rectangleCorners(shape)[0], rectangleCorners(next)[0]];
  expect(after?.x).toBeCloseTo(before?.x ?? NaN);
  expect(after?.y).toBeCloseTo(before?.y ?? NaN);
});

test("a corner changes both sides, the opposite corner stays", () => {
  const pull = { across: -1, along: -1 } as const;
  const { shape: next } = resizedRectangle(shape, pull, place(-1, -3.5), null, false);
  expect(next.widthM).toBeCloseTo(1.6);
  expect(next.lengthM).toBeCloseTo(6.5);
  const [before, after] = [rectangleCorners(shape)[2], rectangleCorners(next)[2]];
  expect(after?.x).toBeCloseTo(before?.x ?? NaN);
  expect(after?.y).toBeCloseTo(before?.y ?? NaN);
});

test("nothing is turned inside out", () => {
  const { shape: next } = resizedRectangle(
    shape,
    { across: 0, along: 1 },
    place(0, -9),
    null,
    false,
  );
  expect(next.lengthM).toBe(LEAST_SIDE_M);
});

test("sides go in steps", () => {
  const { shape: next } = resizedRectangle(
    shape,
    { across: 0, along: -1 },
    place(0, -3.33),
    none,
    false,
  );
  expect(next.lengthM).toBeCloseTo(6.3);
});

describe("snapping", () => {
  const line = { at: 4, reach: [-2, 2], label: "edge of bed B01", takes: "edge" } as const;
  const snap = { ...none, lines: { x: [], y: [line] } };

  test("takes an edge to a line in reach and shows it", () => {
    const { shape: next, guides } = resizedRectangle(
      shape,
      { across: 0, along: 1 },
      place(0, 3.88),
      snap,
      false,
    );
    expect(next.lengthM).toBeCloseTo(7);
    expect(guides.map(({ label }) => label)).toEqual(["edge of bed B01"]);
  });

  test("leaves a line out of reach alone", () => {
    const { guides } = resizedRectangle(shape, { across: 0, along: 1 }, place(0, 3.7), snap, false);
    expect(guides).toEqual([]);
  });
});

test("proportions are kept when asked for", () => {
  const { shape: next } = resizedRectangle(
    shape,
    { across: 1, along: 1 },
    place(0.7, 9),
    null,
    true,
  );
  expect(next.lengthM / next.widthM).toBeCloseTo(5);
  expect(next.lengthM).toBeCloseTo(12);
});
