/** What trees, fences and slopes carry on paper. */
import { describe, expect, test } from "vitest";
import { groundMarks } from "../../../src/core/map/ground-marks.ts";
import type { Mark, PagePoint } from "../../../src/core/page/scene.ts";

/** A rectangle on the page: x to the right, y down; from its near left corner, clockwise. */
function ring(width: number, length: number): readonly PagePoint[] {
  return [
    { x: 0, y: length },
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: length },
  ];
}

function pointsOf(mark: Mark | undefined): readonly PagePoint[] {
  if (mark?.kind !== "line") throw new Error("no line");
  return mark.points;
}

test("a tree has a cross where its trunk stands", () => {
  const marks = groundMarks("tree", ring(10, 6));
  expect(marks).toHaveLength(2);
  for (const mark of marks) {
    const [from, to] = pointsOf(mark);
    expect(((from?.x ?? 0) + (to?.x ?? 0)) / 2).toBeCloseTo(5);
    expect(((from?.y ?? 0) + (to?.y ?? 0)) / 2).toBeCloseTo(3);
  }
});

describe("a fence", () => {
  test("has posts every 4 mm along the middle of a narrow rectangle", () => {
    const posts = groundMarks("fence", ring(1, 40)).map(pointsOf);
    expect(posts).toHaveLength(11);
    expect(posts.map(([from]) => from?.y ?? 0).sort((a, b) => a - b)[1]).toBeCloseTo(4);
  });

  test("has them around anything else, and none where there is no room", () => {
    expect(groundMarks("fence", ring(8, 8))).toHaveLength(12);
    expect(groundMarks("fence", ring(3, 3))).toEqual([]);
  });
});

describe("a slope", () => {
  test("has an arrow from its near end to its far end, which lies up the page here", () => {
    const [shaft] = groundMarks("slope", ring(10, 20));
    const [from, to] = pointsOf(shaft);
    expect(from?.x).toBeCloseTo(5);
    expect(to?.x).toBeCloseTo(5);
    expect(to?.y ?? 0).toBeLessThan(from?.y ?? 0);
  });

  test("without a direction has none", () => {
    expect(groundMarks("slope", ring(10, 20).slice(0, 3))).toEqual([]);
  });
});

test("a building has one black corner, water two waves, which stay inside", () => {
  const [corner] = groundMarks("building", ring(10, 20));
  expect(corner).toMatchObject({ kind: "area", fill: 0 });
  const waves = groundMarks("water", ring(10, 20)).map(pointsOf);
  expect(waves).toHaveLength(2);
  expect(waves.flat().every(({ x }) => x > 0 && x < 10)).toBe(true);
  expect(groundMarks("water", ring(4, 4))).toEqual([]);
});

test("nothing else carries marks", () => {
  expect(groundMarks("bed", ring(10, 20))).toEqual([]);
});

describe("diseased ground", () => {
  const thorns = (shape: readonly PagePoint[]) =>
    groundMarks("disease", shape).map((mark) => {
      if (mark.kind !== "area" || mark.fill !== 0) throw new Error("no black thorn");
      return mark.rings[0] ?? [];
    });

  test.each([
    ["clockwise", ring(9, 18)],
    ["the other way round", ring(9, 18).toReversed()],
  ])("has thorns that point out, its ring %s", (_, shape) => {
    const all = thorns(shape);
    // Every 4.5 mm of 54 mm.
    expect(all).toHaveLength(12);
    for (const [a, b, tip] of all) {
      for (const foot of [a, b]) expect(isWithin(foot)).toBe(true);
      expect(isWithin(tip)).toBe(false);
    }
  });

  test("is seen however narrow it is", () => {
    expect(thorns(ring(0.5, 4)).length).toBeGreaterThanOrEqual(2);
  });

  function isWithin({ x = NaN, y = NaN }: Partial<PagePoint> = {}): boolean {
    return x >= -1e-9 && x <= 9 + 1e-9 && y >= -1e-9 && y <= 18 + 1e-9;
  }
});
