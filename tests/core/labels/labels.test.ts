/** Words on the map: they go where they belong and never lie on one another. */
import { describe, expect, test } from "vitest";
import {
  boxOf,
  isInRings,
  type LabelBox,
  labelBox,
  labelsMeet,
  meetsRings,
  type Ring,
} from "../../../src/core/page/label-box.ts";
import type { Ground } from "../../../src/core/page/label-places.ts";
import { labelPlacer } from "../../../src/core/page/label-placer.ts";
import { type Box, boxRing } from "../../../src/core/page/scene.ts";
import { seededRandom } from "../../properties/seeded-random.ts";

const page: Box = { left: 0, top: 0, width: 200, height: 150 };

function ground(id: string, ring: Ring, isPlanted = true): Ground {
  return { id, rings: [ring], box: boxOf(ring), isPlanted, isSymbol: false };
}

const block = (id: string, left: number, top: number, width: number, height: number) =>
  ground(id, boxRing({ left, top, width, height }));

describe("label boxes", () => {
  test("meet when they overlap, turned or not, and not when they only come near", () => {
    const level = labelBox({ x: 10, y: 10 }, 10, 4, 0);
    expect(labelsMeet(level, labelBox({ x: 19, y: 10 }, 10, 4, 0))).toBe(true);
    expect(labelsMeet(level, labelBox({ x: 20.1, y: 10 }, 10, 4, 0))).toBe(false);
    expect(labelsMeet(level, labelBox({ x: 16.5, y: 6 }, 10, 4, 45))).toBe(false);
    expect(labelsMeet(level, labelBox({ x: 14, y: 13 }, 10, 4, 45))).toBe(true);
  });

  test("inside a concave outline means all of it", () => {
    const hook = [
      [0, 0],
      [20, 0],
      [20, 5],
      [5, 5],
      [5, 20],
      [0, 20],
    ].map(([x = 0, y = 0]) => ({ x, y }));
    expect(isInRings(labelBox({ x: 10, y: 2.5 }, 16, 4, 0), [hook])).toBe(true);
    expect(isInRings(labelBox({ x: 10, y: 6 }, 16, 4, 0), [hook])).toBe(false);
    expect(meetsRings(labelBox({ x: 12, y: 12 }, 4, 4, 0), [hook], boxOf(hook))).toBe(false);
  });
});

describe("placing", () => {
  const size = { width: 12, height: 4 };

  test("in the middle of what is large enough, along its length", () => {
    const placer = labelPlacer(page, [block("a", 20, 20, 40, 10)]);
    const placed = placer.inside(block("a", 20, 20, 40, 10), size);
    expect(placed?.label).toMatchObject({ centre: { x: 40, y: 25 }, turnDeg: 0 });
    const upright = block("b", 100, 20, 6, 40);
    expect(labelPlacer(page, [upright]).turned(upright, size)?.label.turnDeg).toBe(-90);
  });

  test("beside a bed at its left end, off plantings", () => {
    const bed = { ...block("bed", 50, 50, 60, 6), isPlanted: false };
    const planted = block("p", 50, 50, 20, 6);
    const placed = labelPlacer(page, [bed, planted]).beside(bed, size);
    expect(placed?.label.centre.x).toBeLessThan(50);
    expect(placed?.leader).toBeNull();
  });

  test("apart with a leader that ends on the thing and at the label", () => {
    const small = block("s", 100, 75, 2, 2);
    const placed = labelPlacer(page, [small]).apart(small, size);
    expect(placed?.leader?.[0]).toEqual({ x: 101, y: 76 });
    expect(placed && meetsRings(placed.label, small.rings, small.box)).toBe(false);
  });

  test("never outside the drawing, and null when there is no room", () => {
    const tight: Box = { left: 0, top: 0, width: 8, height: 8 };
    const only = block("o", 1, 1, 6, 6);
    const placer = labelPlacer(tight, [only]);
    expect([
      placer.inside(only, size),
      placer.beside(only, size),
      placer.apart(only, size),
    ]).toEqual([null, null, null]);
  });

  test.each([1, 2, 3, 4, 5])(
    "random plots, seed %i: no label on a label, none on another's plot",
    (seed) => {
      const random = seededRandom(seed);
      const between = (least: number, most: number) => random.between(least, most);
      const plots = Array.from({ length: 60 }, (_, index) =>
        block(`p${index}`, between(5, 180), between(5, 135), between(2, 18), between(2, 10)),
      );
      const placer = labelPlacer(page, plots);
      const labels: {
        readonly label: LabelBox;
        readonly own: Ground;
        readonly isInside: boolean;
      }[] = [];
      for (const own of plots) {
        const inside = placer.inside(own, size);
        const placed = inside ?? placer.apart(own, size);
        if (placed) labels.push({ label: placed.label, own, isInside: inside !== null });
      }
      labels.forEach(({ label, own, isInside }, index) => {
        for (const other of labels.slice(index + 1))
          expect(labelsMeet(label, other.label)).toBe(false);
        if (isInside) expect(isInRings(label, own.rings)).toBe(true);
        else for (const plot of plots) expect(meetsRings(label, plot.rings, plot.box)).toBe(false);
      });
      expect(labels.length).toBeGreaterThan(40);
    },
  );
});
