/**
 * The isolation check against the reference JavaScript route (JSTS STRtree and DistanceOp) on the
 * same data in the same run, and one moved planting against a full run. Printed as ratios.
 */
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import STRtree from "jsts/org/locationtech/jts/index/strtree/STRtree.js";
import DistanceOp from "jsts/org/locationtech/jts/operation/distance/DistanceOp.js";
import { describe, expect, test } from "vitest";
import { isolationPairs } from "../../src/core/checks/isolation.ts";
import { runChecks } from "../../src/core/checks/run-checks.ts";
import { resolveStands, type Stand } from "../../src/core/checks/stand.ts";
import { moveObjects } from "../../src/core/edits/move-objects.ts";
import type { Layout, Plan } from "../../src/core/model/plan.ts";
import { book, fieldPlan } from "./field.ts";
import { medianMs } from "./timing.ts";

function layoutOf(plan: Plan): Layout {
  return plan.layouts[0] as Layout;
}

/** Pairs nearer than required by tree and DistanceOp, as "parent source" with their distance. */
function referencePairs(stands: readonly Stand[]): ReadonlyMap<string, number> {
  const factory = new GeometryFactory();
  const tree = new STRtree();
  const shapes = stands.map((stand) => {
    const ring = stand.outline.rings[0] as Float64Array;
    const corners = Array.from({ length: ring.length / 2 + 1 }, (_, index) => {
      const at = (index * 2) % ring.length;
      return new Coordinate(ring[at], ring[at + 1]);
    });
    return factory.createPolygon(factory.createLinearRing(corners), []);
  });
  shapes.forEach((shape, index) => tree.insert(shape.getEnvelopeInternal(), index));
  const pairs = new Map<string, number>();
  stands.forEach((stand, index) => {
    const envelope = shapes[index].getEnvelopeInternal().copy();
    envelope.expandBy(10);
    for (const other of tree.query(envelope).toArray() as number[]) {
      if (other === index || stands[other]?.kind.group !== stand.kind.group) continue;
      const distance = DistanceOp.distance(shapes[index], shapes[other]) as number;
      if (distance < 10 - 1e-6) pairs.set(`${stand.id} ${stands[other]?.id}`, distance);
    }
  });
  return pairs;
}

describe("all conflicts, against JSTS on the same data", () => {
  test.each([
    [1000, 1],
    [1000, 8],
    [10_000, 1],
    [10_000, 8],
  ])("%d plantings in %d crossing groups", (count, groups) => {
    const plan = fieldPlan(count, groups);
    const layout = layoutOf(plan);
    const stands = resolveStands(plan, layout, book);
    const ours = isolationPairs(stands, book).pairs;
    const reference = referencePairs(stands);
    const largest = ours.reduce(
      (worst, pair) =>
        Math.max(
          worst,
          Math.abs(
            pair.distanceM - (reference.get(`${pair.seedParent} ${pair.pollenSource}`) ?? Infinity),
          ),
        ),
      0,
    );
    expect(ours.length).toBe(reference.size);
    expect(largest).toBeLessThan(1e-9);
    const oursMs = medianMs(3, () => isolationPairs(resolveStands(plan, layout, book), book));
    const referenceMs = medianMs(1, () => referencePairs(stands));
    console.log(
      `${count} plantings, ${groups} groups: ${ours.length} directed pairs, largest difference ${largest.toExponential(1)} m, ours ${oursMs.toFixed(1)} ms, JSTS ${referenceMs.toFixed(1)} ms, ratio ${(referenceMs / oursMs).toFixed(1)}`,
    );
  });
});

describe("findings after one planting moves, against a full run", () => {
  test.each([
    [100, 8],
    [500, 1],
    [500, 8],
    [2000, 8],
    [10_000, 8],
  ])("%d plantings in %d crossing groups", (count, groups) => {
    const plan = fieldPlan(count, groups);
    const full = runChecks(plan, layoutOf(plan), book);
    let step = 0;
    let last = full;
    const moveMs = medianMs(15, () => {
      step += 1;
      const moved = moveObjects("layout-1", ["p7"], step * 0.1, 0).apply(plan);
      last = runChecks(moved, layoutOf(moved), book, last);
    });
    const fullMs = medianMs(3, () => runChecks(plan, layoutOf(plan), book));
    console.log(
      `${count} plantings, ${groups} groups: one move ${moveMs.toFixed(2)} ms, full run ${fullMs.toFixed(1)} ms, share ${(moveMs / fullMs).toFixed(3)}`,
    );
  });
});
