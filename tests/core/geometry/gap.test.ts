import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { gapBetween } from "../../../src/core/geometry/gap.ts";
import { moveShape, outlineOf, turnShape } from "../../../src/core/geometry/outline.ts";
import { pointDistance } from "../../../src/core/geometry/point.ts";
import type { Shape } from "../../../src/core/model/plan.ts";
import { referenceDistance, referenceOf } from "../../support/reference-geometry.ts";

interface GapCase {
  readonly name: string;
  readonly a: Shape;
  readonly b: Shape;
  readonly gapM: number;
}

const folder = new URL("../../fixtures/geometry/", import.meta.url);
const files = readdirSync(folder).map((file) => ({
  file,
  cases: JSON.parse(readFileSync(new URL(file, folder), "utf8")) as readonly GapCase[],
}));

describe.each(files)("$file", ({ cases }) => {
  test.each(cases)("$name: $gapM m", ({ a, b, gapM }) => {
    expect(referenceDistance(referenceOf(a), referenceOf(b))).toBeCloseTo(gapM, 9);
    for (const [first, second] of [
      [a, b],
      [b, a],
    ] as const) {
      const gap = gapBetween(outlineOf(first), outlineOf(second));
      expect(gap.distanceM).toBeCloseTo(gapM, 9);
      expect(pointDistance(gap.from, gap.to)).toBeCloseTo(gapM, 9);
    }
  });

  test.each(cases)("$name: the same after a turn and a move", ({ a, b, gapM }) => {
    const placed = (shape: Shape) =>
      outlineOf(moveShape(turnShape(shape, { x: 3, y: -2 }, 37.5), 812.3, -455.1));
    expect(gapBetween(placed(a), placed(b)).distanceM).toBeCloseTo(gapM, 9);
  });
});

test("a gap names the nearest place of the first outline, then of the second", () => {
  const first = outlineOf({ shape: "rectangle", x: 0, y: 0, widthM: 2, lengthM: 2, turnDeg: 0 });
  const second = outlineOf({ shape: "point", x: 4, y: 0.5 });
  expect(gapBetween(first, second)).toEqual({
    distanceM: 3,
    from: { x: 1, y: 0.5 },
    to: { x: 4, y: 0.5 },
  });
});
