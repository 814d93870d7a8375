/** Distances straight out to neighbours; JSTS says where shapes moved by them touch. */
import { describe, expect, test } from "vitest";
import { neighbourGaps } from "../../../src/canvas/snap/neighbour-gaps.ts";
import { sheetItems } from "../../../src/canvas/scene/sheet-items.ts";
import { sideGaps } from "../../../src/canvas/snap/side-gaps.ts";
import { moveShape, outlineOf } from "../../../src/core/geometry/outline.ts";
import { referenceDistance, referenceOf } from "../../support/reference-geometry.ts";
import { seededRandom } from "../../properties/seeded-random.ts";
import { bedOf, book, drawnPlan, plantingOf, rectangle } from "../../support/drawn-plan.ts";

const lengths = (gaps: readonly { readonly distanceM: number }[]) =>
  gaps.map(({ distanceM }) => Math.round(distanceM * 1e6) / 1e6).sort((a, b) => a - b);

describe("the gap straight beside a shape", () => {
  test("moves it until it touches, whatever way the two lie (JSTS)", () => {
    const random = seededRandom(20_270_301);
    let tried = 0;
    for (let round = 0; round < 400; round += 1) {
      const turn = random.between(-180, 180);
      const own = rectangle(0, 0, random.between(0.5, 3), random.between(0.5, 8), turn);
      const other = rectangle(
        random.between(-12, 12),
        random.between(-12, 12),
        random.between(0.5, 3),
        random.between(0.5, 8),
        random.between(-180, 180),
      );
      const reference = referenceOf(other);
      if (referenceDistance(referenceOf(own), reference) === 0) continue;
      for (const { from, to, distanceM } of sideGaps(
        outlineOf(own),
        turn,
        [outlineOf(other)],
        50,
      )) {
        tried += 1;
        const moved = (share: number) =>
          referenceOf(moveShape(own, (to.x - from.x) * share, (to.y - from.y) * share));
        expect(Math.hypot(to.x - from.x, to.y - from.y)).toBeCloseTo(distanceM, 9);
        expect(referenceDistance(moved(1), reference)).toBeLessThan(1e-5);
        expect(referenceDistance(moved(0.98), reference)).toBeGreaterThan(0);
      }
    }
    expect(tried).toBeGreaterThan(150);
  });

  test("is measured in the middle where two edges lie along each other", () => {
    const [gap, ...more] = sideGaps(
      outlineOf(rectangle(0, 0, 2, 4)),
      0,
      [outlineOf(rectangle(4, 1, 2, 4))],
      20,
    );
    expect(more).toEqual([]);
    expect(gap?.distanceM).toBeCloseTo(2);
    expect(gap?.from.x).toBeCloseTo(1);
    expect(gap?.from.y).toBeCloseTo(0.5);
  });

  test("takes the nearest on each side, and none that only passes the corner", () => {
    const others = [rectangle(6, 0, 2, 4), rectangle(4, 0, 1, 1), rectangle(0, 9, 2, 10)];
    const beside = [...others, rectangle(20, 4, 2, 4)].map((shape) => outlineOf(shape));
    expect(lengths(sideGaps(outlineOf(rectangle(0, 0, 2, 4)), 0, beside, 50))).toEqual([2, 2.5]);
  });
});

describe("what is shown around a planting", () => {
  const bed = bedOf("b1", rectangle(0, 0, 1.2, 10));
  const outline = rectangle(0, -2, 0.8, 2);
  const plantings = [
    plantingOf("p1", outline, { bed: "b1" }),
    plantingOf("p2", rectangle(0, 1, 0.8, 2), { bed: "b1" }),
    plantingOf("p3", rectangle(3, -2, 0.8, 2), { bed: "b2" }),
  ];
  const { plan, layout } = drawnPlan({ beds: [bed], plantings });
  const items = sheetItems(plan, layout, book);

  test("is its neighbour in the bed and the bed's own edges", () => {
    const shown = { what: "planting" as const, shape: outline, bed: "b1" };
    expect(lengths(neighbourGaps({ plan, items }, shown, new Set(["p1"])))).toEqual([
      0.2, 0.2, 1, 2,
    ]);
  });

  test("and still the bed's ends where it reaches over an edge", () => {
    const shape = rectangle(0.4, -2, 0.8, 2);
    const shown = { what: "planting" as const, shape, bed: "b1" };
    expect(lengths(neighbourGaps({ plan, items }, shown, new Set(["p1"])))).toEqual([0.6, 1, 2]);
  });
});

test("with nothing straight beside it, the nearest neighbour is measured", () => {
  const beds = [bedOf("b1", rectangle(0, 0, 2, 2)), bedOf("b2", rectangle(6, 5, 2, 2))];
  const { plan, layout } = drawnPlan({ beds });
  const items = sheetItems(plan, layout, book);
  const shown = { what: "bed" as const, shape: rectangle(0, 0, 2, 2) };
  // 4 m across and 3 m up between the nearest corners.
  expect(lengths(neighbourGaps({ plan, items }, shown, new Set(["b1"])))).toEqual([5]);
});
