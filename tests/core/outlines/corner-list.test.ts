import { describe, expect, test } from "vitest";
import { type CornerReading, readCornerList } from "../../../src/core/outlines/corner-list.ts";
import { outlineArea, outlineOf } from "../../../src/core/geometry/outline.ts";

const METRES: CornerReading = { unit: "m", zeroDeg: 0 };

function corners(text: string, reading = METRES) {
  const read = readCornerList(text, reading);
  if (!read.ok) throw new Error(read.reason);
  return read.list.corners.map(({ x, y }) => [x, y]);
}

function reason(text: string, reading = METRES): string {
  const read = readCornerList(text, reading);
  return read.ok ? "" : read.reason;
}

describe("a list of corners", () => {
  test("is read with whatever stands between x and y", () => {
    const square = [
      [0, 0],
      [4, 0],
      [4, 3.5],
    ];
    expect(corners("0, 0\n4, 0\n4, 3.5")).toEqual(square);
    expect(corners("x;y\r\n0;0\r\n4;0\r\n4;3,5\r\n")).toEqual(square);
    expect(corners("0\t0\n4\t0\n4\t3.5")).toEqual(square);
    expect(corners("# the plot\n(0 0)\n(4 0)  # by the gate\n(4 3.5)")).toEqual(square);
    expect(corners("0,0\n4,0\n4 m 3.5 m")).toEqual(square);
    expect(corners("0 ,0\n4 ,0\n4 ,3.5")).toEqual(square);
    expect(corners("0 0\n4 0\n4 3,5", { ...METRES, decimalMark: "," })).toEqual(square);
  });

  test("takes any unit, and signs", () => {
    expect(corners("-3 ft, 12' 6\"")).toEqual([[-0.9144, 3.81]]);
    expect(corners("12' 6\" 3'", { ...METRES, unit: "ft" })).toEqual([[3.81, 0.9144]]);
    expect(corners("10, 20", { ...METRES, unit: "ft" })).toEqual([[3.048, 6.096]]);
  });

  test("takes sides by length and direction, clockwise from the sheet's top", () => {
    expect(corners("1, 1\n4 m at 90\n3 at 0°\n4 @ 270")).toEqual([
      [1, 1],
      [5, 1],
      [5, 4],
      [1, 4],
    ]);
    expect(corners("2 at 180")).toEqual([
      [0, 0],
      [0, -2],
    ]);
  });

  test("or clockwise from north, where the top points elsewhere", () => {
    // The top points east (90): north lies to the left of the sheet.
    const [, end] = corners("0, 0\n10 at 0", { ...METRES, zeroDeg: -90 });
    expect(end).toEqual([-10, 0]);
  });

  test("leaves out a last corner that is the first again, and measures the closing side", () => {
    const read = readCornerList("0, 0\n4, 0\n4, 3\n0, 3\n0, 0", METRES);
    expect(read).toMatchObject({ ok: true, list: { closingM: 3, curves: 0 } });
    expect(corners("0, 0\n4, 0\n4, 3\n0, 3\n0, 0")).toHaveLength(4);
  });

  test("bends edges into arcs: half a circle of radius 3 on a 6 m side has 14.137 m²", () => {
    const read = readCornerList("0, 0\n6, 0 through 3, -3", METRES);
    if (!read.ok) throw new Error(read.reason);
    expect(read.list.curves).toBe(1);
    expect(read.list.curveErrorM).toBeLessThanOrEqual(0.01);
    const ring = read.list.corners.map(({ x, y }): [number, number] => [x, y]);
    const area = outlineArea(outlineOf({ shape: "polygon", corners: ring }));
    // Inside the arc, never outside: pi / 2 * 9 is 14.1372.
    expect(area).toBeLessThan(14.1372);
    expect(area).toBeGreaterThan(14.0);
  });

  test.each([
    ["0, 0\n4", /^Line 2, "4": expected x and y/],
    ["0, 0\n0, 0", /^Line 2, "0, 0": the same corner/],
    ["3, 0 through 1, 1", /a curve needs a corner before it/],
    ["0, 0\n5 at noon", /degrees clockwise/],
    ["0, 0\n0 at 90", /longer than nothing/],
    ["1, 2, 3", /expected x and y/],
    ["0, 0\n4 parsecs, 3", /"parsecs" is not a unit/],
  ])("%j says which line and why", (text, expected) => {
    expect(reason(text)).toMatch(expected);
  });

  test("of thousands of corners is refused, not cut", () => {
    const many = Array.from({ length: 2001 }, (_, index) => `${index}, ${index % 2}`).join("\n");
    expect(reason(many)).toContain("more than 2000 corners");
  });
});
