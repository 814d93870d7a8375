/**
 * Reference values of the kernels and of the edge sum. Closed forms against numerical quadrature;
 * geometry against 2,000,000 angles (values worked out apart from this code).
 */
import { describe, expect, test } from "vitest";
import { foreignShare } from "../../support/foreign-share.ts";
import {
  type Kernel,
  MAIZE_FIT,
  MAIZE_PUBLISHED,
  powerKernel,
  stillAirKernel,
} from "../../../src/core/crossing-share/kernels.ts";
import { pollenShare } from "../../../src/core/crossing-share/pollen-share.ts";
import { samplePlaces } from "../../../src/core/crossing-share/sample-places.ts";
import { type Outline, outlineOf } from "../../../src/core/geometry/outline.ts";

const block = (x: number, y: number, widthM: number, lengthM = widthM): Outline =>
  outlineOf({ shape: "rectangle", x, y, widthM, lengthM, turnDeg: 0 });

describe("share within a distance", () => {
  test.each([
    [1, 0.035807],
    [10, 0.518355],
    [100, 0.944495],
  ])("power a 5 b 1.2 at %d m", (metres, share) => {
    expect(1 - powerKernel(5, 1.2).tail(metres)).toBeCloseTo(share, 6);
  });

  // Klein 2003 as coded in briskaR 1.0.4, h = 1, still air.
  test.each([
    [1, 0.07874],
    [3, 0.38549],
    [10, 0.78916],
    [30, 0.94482],
    [100, 0.99353],
  ])("published maize kernel at %d m", (metres, share) => {
    expect(1 - MAIZE_PUBLISHED.tail(metres)).toBeCloseTo(share, 4);
  });

  test("published maize kernel at the plant", () => {
    expect(stillAirKernel(1).density(0)).toBeCloseTo(0.028256, 5);
  });

  test.each([
    ["fit", MAIZE_FIT],
    ["published", MAIZE_PUBLISHED],
  ])("the density of the %s kernel is the slope of its tail", (_, kernel) => {
    for (const r of [0.5, 2, 9, 40, 150]) {
      const slope = (kernel.tail(r - 1e-4) - kernel.tail(r + 1e-4)) / 2e-4;
      expect(slope / (2 * Math.PI * r)).toBeCloseTo(kernel.density(r), 8);
    }
  });
});

describe("share on a piece of ground", () => {
  test.each([
    [50, 2.410321e-5],
    [100, 2.343261e-6],
    [200, 2.133523e-7],
  ])("a 5 x 5 m bed whose near edge is %d m away", (metres, share) => {
    const got = pollenShare({ x: 0, y: 0 }, block(metres + 2.5, 0, 5), MAIZE_FIT);
    expect(Math.abs(got / share - 1)).toBeLessThan(3e-7);
  });

  test("from the middle of a 10 x 10 m bed", () => {
    expect(pollenShare({ x: 0, y: 0 }, block(0, 0, 10), MAIZE_FIT)).toBeCloseTo(0.774949, 6);
  });

  test("a 1 x 30 m bed 2 m away", () => {
    expect(pollenShare({ x: 0, y: 0 }, block(2.5, 0, 1, 30), MAIZE_FIT)).toBeCloseTo(0.05273688, 7);
  });

  test("a hole counts for nothing, and the way a ring runs makes no difference", () => {
    const corners: [number, number][] = [
      [0, 0],
      [10, 0],
      [10, 10],
      [0, 10],
    ];
    const hole: [number, number][] = [
      [4, 4],
      [6, 4],
      [6, 6],
      [4, 6],
    ];
    const from = { x: 13, y: 5 };
    const share = (ring: [number, number][], holes: [number, number][][]) =>
      pollenShare(from, outlineOf({ shape: "polygon", corners: ring, holes }), MAIZE_FIT);
    const ringed = share(corners, [hole]);
    expect(ringed).toBeCloseTo(share(corners, []) - share(hole, []), 12);
    expect(share([...corners].reverse(), [[...hole].reverse()])).toBeCloseTo(ringed, 12);
  });

  test("agrees with summing the density over a fine grid, on an outline with a bay", () => {
    const bay = outlineOf({
      shape: "polygon",
      corners: [
        [0, 0],
        [8, 0],
        [8, 6],
        [5, 6],
        [5, 2],
        [3, 2],
        [3, 6],
        [0, 6],
      ],
    });
    for (const from of [
      { x: 4, y: 4 },
      { x: -3, y: 1 },
      { x: 20, y: 11 },
      { x: 1.02, y: 3.03 },
    ]) {
      const got = pollenShare(from, bay, MAIZE_PUBLISHED);
      expect(Math.abs(got / gridSum(from, bay, MAIZE_PUBLISHED) - 1)).toBeLessThan(2e-3);
    }
  });
});

/** The kernel summed over cells of 2 cm. */
function gridSum(from: { x: number; y: number }, ground: Outline, kernel: Kernel): number {
  const cell = 0.02;
  const rectangles: [number, number, number, number][] = [
    [0, 0, 8, 2],
    [0, 2, 3, 6],
    [5, 2, 8, 6],
  ];
  expect(ground.bounds.maxX).toBe(8);
  let sum = 0;
  for (const [x0, y0, x1, y1] of rectangles) {
    for (let x = x0 + cell / 2; x < x1; x += cell) {
      for (let y = y0 + cell / 2; y < y1; y += cell) {
        sum += kernel.density(Math.hypot(x - from.x, y - from.y)) * cell * cell;
      }
    }
  }
  return sum;
}

describe("foreign share of a 5 x 5 m bed from one like it, in percent", () => {
  const share = (gap: number, kernel: Kernel, donorM = 5, bedM = 5) =>
    100 *
    foreignShare(
      samplePlaces(block(0, 0, bedM)),
      [{ ground: block(0, 0, bedM), strength: 1 }],
      [{ ground: block(bedM / 2 + gap + donorM / 2, 0, donorM), strength: 1 }],
      kernel,
    );

  // Worked out apart from this code on the same 8 x 8 grid.
  test.each([
    [1, 8.162, 15.0],
    [5, 1.575, 3.801],
    [10, 0.406, 1.105],
    [25, 0.039, 0.129],
    [50, 0.005, 0.0184],
  ])("%d m apart", (gap, fit, published) => {
    expect(Math.abs(share(gap, MAIZE_FIT) - fit)).toBeLessThan(0.0006);
    expect(Math.abs(share(gap, MAIZE_PUBLISHED) / published - 1)).toBeLessThan(0.005);
  });

  test.each([
    [10, 10, 3, 1.811],
    [10, 3, 10, 0.083],
    [100, 100, 5, 0.067],
  ])("size counts: %d m apart, source %d m, bed %d m", (gap, donorM, bedM, percent) => {
    expect(share(gap, MAIZE_FIT, donorM, bedM)).toBeCloseTo(percent, 3);
  });

  test("half the bloom together halves what a small share amounts to", () => {
    const bed = block(0, 0, 5);
    const source = { ground: block(15, 0, 5), strength: 0.2 };
    const places = samplePlaces(bed);
    const own = [{ ground: bed, strength: 1 }];
    expect(100 * foreignShare(places, own, [source], MAIZE_FIT)).toBeCloseTo(0.081, 3);
  });
});
