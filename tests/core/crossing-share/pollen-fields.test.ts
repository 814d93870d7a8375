/**
 * The sums over ground against adaptive quadrature of the curve over the ground itself (Simpson's
 * rule both ways, halved until it settles): no edge, no angle and no shortcut in common with ours.
 */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Kernel,
  MAIZE_FIT,
  MAIZE_PUBLISHED,
} from "../../../src/core/crossing-share/kernels.ts";
import { pollenFields } from "../../../src/core/crossing-share/pollen-fields.ts";
import { pollenGround } from "../../../src/core/crossing-share/pollen-ground.ts";
import { pollenShare } from "../../../src/core/crossing-share/pollen-share.ts";
import { samplePlaces } from "../../../src/core/crossing-share/sample-places.ts";
import { type Outline, outlineArea, outlineOf } from "../../../src/core/geometry/outline.ts";
import type { Point } from "../../../src/core/geometry/point.ts";

type Corner = readonly [number, number];

const CURVES: readonly (readonly [string, Kernel])[] = [
  ["our fit", MAIZE_FIT],
  ["the published curve", MAIZE_PUBLISHED],
];

function simpson(f: (x: number) => number, from: number, to: number, within: number): number {
  const part = (a: number, fa: number, b: number, fb: number, fm: number): number =>
    ((b - a) / 6) * (fa + 4 * fm + fb);
  const settle = (
    a: number,
    fa: number,
    b: number,
    fb: number,
    fm: number,
    whole: number,
    error: number,
    depth: number,
  ): number => {
    const m = (a + b) / 2;
    const [left, right] = [f((a + m) / 2), f((m + b) / 2)];
    const [low, high] = [part(a, fa, m, fm, left), part(m, fm, b, fb, right)];
    const off = low + high - whole;
    if (depth === 0 || Math.abs(off) < 15 * error) return low + high + off / 15;
    return (
      settle(a, fa, m, fm, left, low, error / 2, depth - 1) +
      settle(m, fm, b, fb, right, high, error / 2, depth - 1)
    );
  };
  const [fa, fb, fm] = [f(from), f(to), f((from + to) / 2)];
  return settle(from, fa, to, fb, fm, part(from, fa, to, fb, fm), within, 22);
}

/** Over one triangle: its corners by two parameters from 0 to 1. */
function overTriangle(from: Point, [a, b, c]: readonly Corner[], { density }: Kernel): number {
  if (!a || !b || !c) return 0;
  const [ux, uy, vx, vy] = [b[0] - a[0], b[1] - a[1], c[0] - b[0], c[1] - b[1]];
  const twice = ux * vy - uy * vx;
  return (
    twice *
    simpson(
      (s) =>
        s *
        simpson(
          (t) =>
            density(
              Math.hypot(a[0] + s * (ux + t * vx) - from.x, a[1] + s * (uy + t * vy) - from.y),
            ),
          0,
          1,
          1e-11,
        ),
      0,
      1,
      1e-11,
    )
  );
}

/** A fan of triangles from the first corner, each with its sign: any simple ring. */
function overRing(from: Point, corners: readonly Corner[], kernel: Kernel): number {
  const first = corners[0] ?? [0, 0];
  let sum = 0;
  for (let index = 1; index + 1 < corners.length; index++) {
    const [b = first, c = first] = [corners[index], corners[index + 1]];
    sum += overTriangle(from, [first, b, c], kernel);
  }
  return Math.abs(sum);
}

const polygon = (corners: readonly Corner[]): Outline =>
  outlineOf({ shape: "polygon", corners: corners.map(([x, y]): [number, number] => [x, y]) });

const SHAPES: readonly (readonly [string, readonly Corner[]])[] = [
  [
    "a bed",
    [
      [0, 0],
      [1.2, 0],
      [1.2, 6],
      [0, 6],
    ],
  ],
  [
    "a triangle",
    [
      [0, 0],
      [9, 1],
      [2, 5],
    ],
  ],
  [
    "a bed round a corner",
    [
      [0, 0],
      [8, 0],
      [8, 2],
      [2, 2],
      [2, 7],
      [0, 7],
    ],
  ],
  [
    "a field",
    [
      [-40, -25],
      [45, -30],
      [60, 20],
      [-35, 40],
    ],
  ],
];

describe.each(CURVES)("the edge sum by %s against adaptive quadrature", (_name, kernel) => {
  test.each(SHAPES)("%s", (_shape, corners) => {
    for (const from of [
      { x: -3, y: 2 },
      { x: 14, y: -6 },
      { x: 70, y: 55 },
      { x: 5, y: 2.6 },
    ]) {
      const ours = pollenShare(from, polygon(corners), kernel);
      expect(Math.abs(ours - overRing(from, corners, kernel))).toBeLessThan(2e-6);
    }
  });
});

describe.each(CURVES)("ground told by four places, by %s", (_name, kernel) => {
  test.each(SHAPES)("%s is within a per cent from two and a half spans off", (_shape, corners) => {
    const outline = polygon(corners);
    const { x, y, spanM, places, placeM2 } = pollenGround(outline);
    expect(4 * placeM2).toBeCloseTo(outlineArea(outline), 9);
    for (const spans of [2.501, 3, 5, 9]) {
      for (let turn = 0; turn < 12; turn++) {
        const angle = (turn * Math.PI) / 6;
        const from = {
          x: x + spans * spanM * Math.cos(angle),
          y: y + spans * spanM * Math.sin(angle),
        };
        let sum = 0;
        for (let index = 0; index < places.length; index += 2) {
          const [px = 0, py = 0] = [places[index], places[index + 1]];
          sum += placeM2 * kernel.density(Math.hypot(from.x - px, from.y - py));
        }
        const exact = overRing(from, corners, kernel);
        // Where the still-air curve has died off, ours stands alone.
        if (exact > 1e-8) expect(Math.abs(sum / exact - 1)).toBeLessThan(0.01);
      }
    }
  });
});

test("what a planting takes is within a per cent of the exact sum at its places, on average", () => {
  const bed = fc.record({
    widthM: fc.double({ min: 0.3, max: 12, noNaN: true }),
    lengthM: fc.double({ min: 0.3, max: 20, noNaN: true }),
    turnDeg: fc.double({ min: 0, max: 180, noNaN: true }),
    x: fc.double({ min: -60, max: 60, noNaN: true }),
    y: fc.double({ min: -60, max: 60, noNaN: true }),
  });
  const mean = (values: ArrayLike<number>) =>
    Array.from(values).reduce((sum, value) => sum + value, 0) / values.length;
  fc.assert(
    fc.property(bed, bed, (a, b) => {
      const [taker, ground] = [a, b].map((at) => outlineOf({ shape: "rectangle", ...at }));
      if (!taker || !ground) return;
      const places = samplePlaces(taker);
      const fields = pollenFields(taker, ground);
      expect(fields.fit.length).toBe(places.length);
      const exact = mean(places.map((place) => pollenShare(place, ground, MAIZE_FIT)));
      expect(Math.abs(mean(fields.fit) / exact - 1)).toBeLessThan(0.01);
    }),
    { numRuns: 300, seed: 20 },
  );
});

test("a turned and shifted bed keeps of its own pollen what its twin keeps", () => {
  for (const [widthM, lengthM] of [
    [1.2, 6],
    [6, 1.2],
    [3, 3],
  ] as const) {
    for (const turnDeg of [0, 33, 90, 171]) {
      const bed = outlineOf({ shape: "rectangle", x: 7, y: -4, widthM, lengthM, turnDeg });
      const { fit } = pollenFields(bed, bed);
      const exact = samplePlaces(bed).map((place) => pollenShare(place, bed, MAIZE_FIT));
      exact.forEach((share, place) => expect(fit[place]).toBeCloseTo(share, 6));
    }
  }
});
