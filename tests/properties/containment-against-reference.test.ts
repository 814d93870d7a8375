/**
 * Reaching out and overlapping against JSTS overlays: what one says, the other must find.
 * 4,000 pairs; WIDEBERTH_PAIRS sets how many.
 */
import { expect, test, vi } from "vitest";
import { overlapDepth, overlapsBy, protrusion } from "../../src/core/geometry/containment.ts";
import { type Outline, outlineArea, outlineOf } from "../../src/core/geometry/outline.ts";
import { pointDistance } from "../../src/core/geometry/point.ts";
import type { Shape } from "../../src/core/model/plan.ts";
import {
  type ReferenceGeometry,
  referenceCorners,
  referenceDistance,
  referenceOf,
  referencePoint,
  referenceRest,
  sharedArea,
} from "../support/reference-geometry.ts";
import { randomStar, rectangle, shapePair } from "../support/shape-pairs.ts";
import { type SeededRandom, seededRandom } from "./seeded-random.ts";

vi.setConfig({ testTimeout: 3_600_000 });

const PAIRS = Number(process.env["WIDEBERTH_PAIRS"] ?? 4000);
/** Overlays of nearly equal edges are uncertain by about this much, metres. */
const DOUBT_M = 1e-5;

interface Prepared {
  readonly shape: Shape;
  readonly outline: Outline;
  readonly reference: ReferenceGeometry;
}

function prepared(shape: Shape): Prepared {
  return { shape, outline: outlineOf(shape), reference: referenceOf(shape) };
}

/** Pairs of areas out of the awkward ones, the first seed that gives areas. */
function areaPair(index: number, random: SeededRandom): readonly [Prepared, Prepared] {
  for (;;) {
    const { a, b } = shapePair(index, random);
    if (a.shape !== "point" && b.shape !== "point") return [prepared(a), prepared(b)];
    index += 1;
  }
}

function eachPair(check: (a: Prepared, b: Prepared) => string | null): readonly string[] {
  const faults: string[] = [];
  for (let index = 0; index < PAIRS && faults.length < 20; index += 1) {
    const [a, b] = areaPair(index, seededRandom(index + 1));
    const fault = check(a, b);
    if (fault !== null) {
      faults.push(`seed ${index + 1}: ${fault} ${JSON.stringify([a.shape, b.shape])}`);
    }
  }
  return faults;
}

/** The parts of `inner` outside `outer`: their ground, and how far out their corners lie. */
function outsideParts(inner: Prepared, outer: Prepared) {
  const rest = referenceRest(inner.reference, outer.reference);
  const reaches = referenceCorners(rest).map((at) =>
    referenceDistance(referencePoint(at), outer.reference),
  );
  return { area: rest.getArea(), farthestM: Math.max(0, ...reaches) };
}

test("what reaches out of an outline is found, and how far is exact for convex ones", () => {
  const faults = eachPair((inner, outer) => {
    const reach = protrusion(inner.outline, outer.outline);
    const { area, farthestM } = outsideParts(inner, outer);
    if (Math.abs(reach.distanceM - pointDistance(reach.from, reach.to)) > 1e-9) {
      return "the reach is not the distance of its points";
    }
    if (outer.shape.shape === "rectangle" && Math.abs(reach.distanceM - farthestM) > DOUBT_M) {
      return `reaches out ${reach.distanceM} m, the reference ${farthestM} m`;
    }
    if (area > 1e-3 && reach.distanceM < 1e-4) return `missed ${area} m² outside`;
    return area < 1e-9 && reach.distanceM > DOUBT_M ? `${reach.distanceM} m of nothing` : null;
  });
  expect(faults).toEqual([]);
});

test("ground that two outlines share is found, and none where they only touch", () => {
  const faults = eachPair((a, b) => {
    const depth = overlapDepth(a.outline, b.outline);
    const area = sharedArea(a.reference, b.reference);
    if (Math.abs(depth.distanceM - pointDistance(depth.from, depth.to)) > 1e-9) {
      return "the depth is not the distance of its points";
    }
    if (area > 1e-3 && depth.distanceM < 1e-4) return `missed ${area} m²: ${depth.distanceM} m`;
    // A thread of ground may lie deep in another and cover nothing to speak of.
    const isThread = Math.min(outlineArea(a.outline), outlineArea(b.outline)) < 0.05;
    return !isThread && depth.distanceM > 1e-3 && area < depth.distanceM ** 2 * 1e-3
      ? `${depth.distanceM} m deep, but ${area} m² shared`
      : null;
  });
  expect(faults).toEqual([]);
});

test("whether two lie in each other by so much is what their depth says", () => {
  let [deep, shallow] = [0, 0];
  const faults = eachPair((a, b) => {
    const { distanceM } = overlapDepth(a.outline, b.outline);
    // On either side of their depth as well, by more and by less than rounding.
    const asked = [0.02, 1, ...[-0.1, -1e-7, 0, 1e-7, 0.1].map((by) => distanceM + by)];
    for (const metres of asked.filter((each) => each > 0)) {
      const isDeeper = distanceM > metres;
      if (isDeeper) deep += 1;
      else shallow += 1;
      if (overlapsBy(a.outline, b.outline, metres) !== isDeeper) return `${distanceM}, ${metres}`;
      if (overlapsBy(b.outline, a.outline, metres) !== isDeeper) return `back, ${metres}`;
    }
    return null;
  });
  expect(faults).toEqual([]);
  expect(deep).toBeGreaterThan(100);
  expect(shallow).toBeGreaterThan(100);
});

test("an outline that shares its middle with itself overlaps itself", () => {
  const shapes = [
    rectangle(0, 0, 2, 6, 30),
    ...Array.from({ length: 500 }, (_, index) => randomStar(seededRandom(index))),
  ];
  for (const shape of shapes) {
    const depth = overlapDepth(outlineOf(shape), outlineOf(shape));
    if (!(depth.distanceM > 0.001)) throw new Error(`${depth.distanceM}: ${JSON.stringify(shape)}`);
  }
});
