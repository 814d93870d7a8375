import { describe, expect, test } from "vitest";
import { readPosition } from "../../../src/core/formats/position-text.ts";

/** 51° 25′ 12″ is 51.42 degrees exactly; 0° 21′ is 0.35. */
const both = { latitude: 51.42, longitude: -0.35 };

describe("places on earth as people write them", () => {
  test.each([
    ["51.42", { latitude: 51.42 }],
    ["51,42", { latitude: 51.42 }],
    ["-33.9", { latitude: -33.9 }],
    ["51.42 N", { latitude: 51.42 }],
    ["N51.42°", { latitude: 51.42 }],
    ["51 25 12 N", { latitude: 51.42 }],
    ["51°25'12\"N", { latitude: 51.42 }],
    ["51°25′12″ N", { latitude: 51.42 }],
    ["51:25:12", { latitude: 51.42 }],
    ["51° 25.2′", { latitude: 51.42 }],
    ["33 54 0 s", { latitude: -33.9 }],
    ["0.35 W", { longitude: -0.35 }],
    ["51.42, -0.35", both],
    ["51.42,-0.35", both],
    ["51,42; -0,35", both],
    ["51.42 -0.35", both],
    ["51 25 12 N, 0 21 0 W", both],
    ["51°25'12\"N 0°21'0\"W", both],
    ["N 51.42 W 0.35", both],
    ["0.35 W, 51.42 N", both],
    ["51 25 12 -0 21 0", both],
  ])("%s", (text, expected) => {
    const { ok, ...told } = readPosition(text, "latitude");
    expect(ok).toBe(true);
    for (const [axis, degrees] of Object.entries(expected)) {
      expect(told).toHaveProperty(axis);
      expect(Reflect.get(told, axis)).toBeCloseTo(degrees, 12);
    }
    expect(Object.keys(told).toSorted()).toEqual(Object.keys(expected).toSorted());
  });

  test.each([
    // The examples of ISO 6709, annex H, in degrees: the Great Pyramid's base, Mount Everest.
    ["+40.20361-075.00417/", { latitude: 40.20361, longitude: -75.00417 }],
    ["+27.5916+086.5640/", { latitude: 27.5916, longitude: 86.564 }],
  ])("%s, as ISO 6709 writes it", (text, expected) => {
    expect(readPosition(text, "latitude")).toEqual({ ok: true, ...expected });
  });

  test("a number alone is of the axis it is asked for", () => {
    expect(readPosition("0.35", "longitude")).toEqual({ ok: true, longitude: 0.35 });
    expect(readPosition("51.42 N", "longitude")).toEqual({ ok: true, latitude: 51.42 });
  });

  test.each([
    ["", /Type degrees/],
    ["north", /Type degrees/],
    ["51 70 N", /Type degrees/],
    ["51.5 20 10 N", /Type degrees/],
    ["95", /Latitude goes to 90 degrees/],
    ["10, 190", /Longitude goes to 180 degrees/],
    ["-51.42 S", /say the same twice/],
    ["51.42 N, 12 S", /of one axis/],
    ["51.42, 0.35, 12", /Type degrees/],
    ["1".repeat(200), /Type degrees/],
  ])("%s is refused with what is expected", (text, reason) => {
    const read = readPosition(text, "latitude");
    expect(read.ok).toBe(false);
    expect(read.ok ? "" : read.reason).toMatch(reason);
  });
});
