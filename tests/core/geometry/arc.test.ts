import { describe, expect, test } from "vitest";
import { ARC_ERROR_M, arcThrough } from "../../../src/core/geometry/arc.ts";
import { type Point, pointDistance } from "../../../src/core/geometry/point.ts";

const at = (x: number, y: number): Point => ({ x, y });

describe("an arc through three places", () => {
  test("a half circle of radius 3 goes by way of its top, all corners on the circle", () => {
    const { corners, radiusM, errorM } = arcThrough(at(0, 0), at(3, 3), at(6, 0));
    expect(radiusM).toBeCloseTo(3, 9);
    expect(corners.at(-1)).toEqual(at(6, 0));
    for (const corner of corners) expect(pointDistance(corner, at(3, 0))).toBeCloseTo(3, 5);
    expect(Math.min(...corners.map(({ y }) => y))).toBeGreaterThanOrEqual(-1e-6);
    expect(errorM).toBeLessThanOrEqual(ARC_ERROR_M);
  });

  test("goes round the other way when it passes through a place there", () => {
    const { corners } = arcThrough(at(0, 0), at(3, -3), at(6, 0));
    expect(Math.max(...corners.map(({ y }) => y))).toBeLessThanOrEqual(1e-6);
  });

  test("the most of a circle is taken where the three places say so", () => {
    // From the right of the unit circle by way of its left to its foot: three quarters, anticlockwise.
    const { corners } = arcThrough(at(1, 0), at(-1, 0), at(0, -1));
    expect(corners.some(({ y }) => y > 0.95)).toBe(true);
    expect(corners.at(-1)).toEqual(at(0, -1));
  });

  test("no edge lies further inside the arc than is said, measured at its middle", () => {
    for (const radius of [0.5, 2, 10, 60]) {
      const { corners, errorM } = arcThrough(at(-radius, 0), at(0, radius), at(radius, 0));
      let before = at(-radius, 0);
      for (const corner of corners) {
        const middle = at((before.x + corner.x) / 2, (before.y + corner.y) / 2);
        expect(radius - pointDistance(middle, at(0, 0))).toBeLessThanOrEqual(errorM + 1e-6);
        before = corner;
      }
      expect(errorM).toBeLessThanOrEqual(ARC_ERROR_M + 1e-9);
    }
  });

  test("three places on a line are a straight edge", () => {
    expect(arcThrough(at(0, 0), at(1, 0), at(2, 0))).toEqual({
      corners: [at(2, 0)],
      radiusM: null,
      errorM: 0,
    });
    expect(arcThrough(at(0, 0), at(1, 1), at(0, 0)).radiusM).toBeNull();
  });
});
