/** Ground for first beds on plots of any outline: always on the plot, and there where it can be. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { groundOnPlot } from "../../../src/core/beds/bed-on-plot.ts";
import { protrusion } from "../../../src/core/geometry/containment.ts";
import { outlineOf } from "../../../src/core/geometry/outline.ts";
import { turnPoint } from "../../../src/core/geometry/point.ts";

const polygon = (corners: readonly (readonly [number, number])[]) =>
  outlineOf({ shape: "polygon", corners });

const BED = { widthM: 1.2, lengthM: 10, marginM: 0.6 };

/** How far a bed with its margin sticks out of the plot, metres. */
function outM(plot: ReturnType<typeof polygon>, wanted = BED) {
  const found = groundOnPlot(plot, wanted);
  if (!found) return null;
  const grown = {
    ...found,
    shape: "rectangle" as const,
    widthM: wanted.widthM + 2 * wanted.marginM,
    lengthM: found.lengthM + 2 * wanted.marginM,
  };
  return protrusion(outlineOf(grown), plot).distanceM;
}

describe("ground for a first bed", () => {
  test("on a rectangle: lower left, a path in from the edge, as long as wanted", () => {
    const plot = polygon([
      [5, 2],
      [25, 2],
      [25, 22],
      [5, 22],
    ]);
    expect(groundOnPlot(plot, BED)).toEqual({ x: 6.2, y: 7.6, lengthM: 10, turnDeg: 0 });
  });

  test("in an L whose corner of the bounding box is empty it lies on a leg", () => {
    const plot = polygon([
      [10, 0],
      [20, 0],
      [20, 20],
      [0, 20],
      [0, 12],
      [10, 12],
    ]);
    const found = groundOnPlot(plot, BED);
    expect(found?.lengthM).toBe(10);
    expect(outM(plot)).toBeLessThan(0.01);
  });

  test("along a narrow plot that lies turned it is turned with it", () => {
    const turned = [
      [0, 0],
      [3, 0],
      [3, 30],
      [0, 30],
    ].map(([x = 0, y = 0]) => {
      const corner = turnPoint({ x, y }, { x: 0, y: 0 }, 30);
      return [corner.x, corner.y] as const;
    });
    expect(groundOnPlot(polygon(turned), BED)).toMatchObject({ lengthM: 10, turnDeg: 30 });
  });

  test("a plot with no room for a bed has none", () => {
    const plot = polygon([
      [0, 0],
      [1, 0],
      [0, 1],
    ]);
    expect(groundOnPlot(plot, BED)).toBeNull();
  });

  test("never off a plot, whatever its outline", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 3, max: 20, noNaN: true }), { minLength: 5, maxLength: 9 }),
        (radii) => {
          // A star about the origin: its sides never cross.
          const corners = radii.map((radius, index) => {
            const angle = (index / radii.length) * 2 * Math.PI;
            return [Math.cos(angle) * radius, Math.sin(angle) * radius] as const;
          });
          expect(outM(polygon(corners)) ?? 0).toBeLessThan(0.01);
        },
      ),
      { numRuns: 40 },
    );
  });
});
