/** Plantings that have one ground in turn: each is drawn on a part of it, and the parts make it up. */
import { expect, test } from "vitest";
import { sectorOf } from "../../../src/canvas/ground/shared-ground.ts";
import type { Point } from "../../../src/core/geometry/point.ts";
import type { Planting } from "../../../src/core/model/plan.ts";
import { type TrialPlanting, day, layoutOf, trialPlan } from "../../support/trial-plan.ts";

const ground = { shape: "rectangle", x: 2, y: 3, widthM: 1.2, lengthM: 8, turnDeg: -80 } as const;
const sown = (iso: string) => ({ method: "sown" as const, date: day(`2027-${iso}`) });

function plantings(list: Readonly<Record<string, Partial<TrialPlanting>>>): readonly Planting[] {
  const all = Object.fromEntries(
    Object.entries(list).map(([id, more]) => [
      id,
      { at: 0, kind: "pea", outline: ground, bloom: null, ...more },
    ]),
  );
  return layoutOf(trialPlan(all)).plantings;
}

function areaOf(corners: readonly Point[]): number {
  return Math.abs(
    corners.reduce((sum, { x, y }, index) => {
      const next = corners[(index + 1) % corners.length] ?? { x: 0, y: 0 };
      return sum + x * next.y - next.x * y;
    }, 0) / 2,
  );
}
const sectors = (list: readonly Planting[]) => list.map((planting) => sectorOf(list, planting));

test("two halves from corner to corner, the earlier to the left", () => {
  const list = plantings({
    leeks: { start: sown("07-06") },
    peas: { start: sown("03-10"), end: day("2027-07-05") },
  });
  const [leeks, peas] = sectors(list);
  if (!leeks || !peas) throw new Error("no sectors");
  expect(areaOf(leeks)).toBeCloseTo(4.8, 9);
  expect(areaOf(peas)).toBeCloseTo(4.8, 9);
  const middle = (corners: readonly Point[]) =>
    corners.reduce((sum, { x }) => sum + x, 0) / corners.length;
  expect(middle(peas)).toBeLessThan(middle(leeks));
});

test("three parts that make up the whole", () => {
  const list = plantings({
    a: { end: day("2027-05-01") },
    b: { start: sown("05-01"), end: day("2027-07-01") },
    c: { start: sown("07-02") },
  });
  const parts = sectors(list);
  expect(parts.every((part) => part !== null)).toBe(true);
  const sum = parts.reduce((total, part) => total + areaOf(part ?? []), 0);
  expect(sum).toBeCloseTo(9.6, 9);
});

test("what stands together, lies apart or has no end has its ground to itself", () => {
  const together = plantings({ a: { end: day("2027-08-01") }, b: { start: sown("07-01") } });
  expect(sectors(together)).toEqual([null, null]);
  const apart = plantings({
    a: { end: day("2027-06-01") },
    b: { start: sown("07-01"), outline: { ...ground, x: 20 } },
  });
  expect(sectors(apart)).toEqual([null, null]);
});
