import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type RingPiece,
  offsetRing,
  part,
  pieceAt,
  pieceLength,
} from "../../../src/core/geometry/offset-ring.ts";
import { gapBetween } from "../../../src/core/geometry/gap.ts";
import { type Outline, outlineOf, pointOutline } from "../../../src/core/geometry/outline.ts";
import type { PolygonShape } from "../../../src/core/model/plan.ts";
import { rectangle } from "../../support/drawn-plan.ts";

function polygon(...corners: readonly (readonly [number, number])[]): PolygonShape {
  return { shape: "polygon", corners };
}

const whole = (pieces: readonly RingPiece[]) =>
  pieces.reduce((sum, piece) => sum + pieceLength(piece), 0);

/** The largest error of the distance along the ring. */
function worstError(outline: Outline, radiusM: number): number {
  let worst = 0;
  for (const piece of offsetRing(outline, radiusM)) {
    for (let share = 0; share <= 1; share += 0.05) {
      const { distanceM } = gapBetween(pointOutline(pieceAt(piece, share)), outline);
      worst = Math.max(worst, Math.abs(distanceM - radiusM));
    }
  }
  return worst;
}

/** Ends that meet no other end: none on a closed ring. */
function looseEnds(pieces: readonly RingPiece[]): number {
  const ends = pieces.flatMap((piece) => [pieceAt(piece, 0), pieceAt(piece, 1)]);
  return ends.filter(
    (end) => ends.filter((other) => Math.hypot(other.x - end.x, other.y - end.y) < 1e-6).length % 2,
  ).length;
}

test("a single plant has a circle", () => {
  const pieces = offsetRing(outlineOf({ shape: "point", x: 2, y: 3 }), 5);
  expect(pieces).toHaveLength(1);
  expect(whole(pieces)).toBeCloseTo(10 * Math.PI);
});

test("a rectangle has four sides and four quarter circles", () => {
  const outline = outlineOf(rectangle(4, 5, 1.2, 6, 27));
  const pieces = offsetRing(outline, 7.6);
  expect(pieces.filter((piece) => piece.kind === "straight")).toHaveLength(4);
  expect(pieces.filter((piece) => piece.kind === "arc")).toHaveLength(4);
  expect(whole(pieces)).toBeCloseTo(2 * (1.2 + 6) + 2 * Math.PI * 7.6);
  expect(worstError(outline, 7.6)).toBeLessThan(1e-9);
});

test("corners given the other way round make the same ring", () => {
  const clockwise = outlineOf(polygon([0, 0], [0, 3], [4, 3], [4, 0]));
  const anticlockwise = outlineOf(polygon([4, 0], [4, 3], [0, 3], [0, 0]));
  expect(whole(offsetRing(clockwise, 2))).toBeCloseTo(whole(offsetRing(anticlockwise, 2)));
});

describe("an outline that turns inward", () => {
  const hook = outlineOf(
    polygon([0, 0], [10, 0], [10, 10], [7, 10], [7, 3], [3, 3], [3, 10], [0, 10]),
  );

  test.each([0.5, 1.5, 1.99, 2.5, 5, 12, 60])("keeps its distance at %s m", (radiusM) => {
    expect(worstError(hook, radiusM)).toBeLessThan(1e-8);
    expect(looseEnds(offsetRing(hook, radiusM))).toBe(0);
  });

  test("has no line in the bay once the ring has filled it", () => {
    const inBay = offsetRing(hook, 2.5)
      .map((piece) => pieceAt(piece, 0.5))
      .filter(({ x, y }) => x > 3 && x < 7 && y > 3 && y < 10);
    expect(inBay).toEqual([]);
  });
});

test("any star-shaped outline keeps its distance all round", () => {
  const radii = fc.array(fc.double({ min: 1, max: 10, noNaN: true }), {
    minLength: 3,
    maxLength: 12,
  });
  fc.assert(
    fc.property(radii, fc.double({ min: 0.1, max: 30, noNaN: true }), (spokes, radiusM) => {
      const corners = spokes.map((spoke, index) => {
        const angle = (index / spokes.length) * Math.PI * 2;
        return [Math.cos(angle) * spoke, Math.sin(angle) * spoke] as const;
      });
      const outline = outlineOf(polygon(...corners));
      expect(worstError(outline, radiusM)).toBeLessThan(1e-6);
    }),
    { numRuns: 60 },
  );
});

test("no distance, no ring", () => {
  expect(offsetRing(outlineOf(rectangle(0, 0, 1, 1)), 0)).toEqual([]);
});

test("parts of a piece join up", () => {
  for (const piece of offsetRing(outlineOf(rectangle(0, 0, 2, 3, 10)), 4)) {
    const [first, second] = [part(piece, 0, 0.4), part(piece, 0.4, 1)];
    expect(pieceLength(first) + pieceLength(second)).toBeCloseTo(pieceLength(piece));
    expect(pieceAt(first, 1).x).toBeCloseTo(pieceAt(second, 0).x);
    expect(pieceAt(second, 1).y).toBeCloseTo(pieceAt(piece, 1).y);
  }
});
