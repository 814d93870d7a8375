import { describe, expect, test } from "vitest";
import {
  formatArea,
  formatDistance,
  formatLength,
  formatMeasured,
  formatRequired,
  parseLength,
} from "../../../src/core/model/length.ts";

function metresOf(text: string, unit: "m" | "ft" = "m"): number | string {
  const parsed = parseLength(text, unit);
  return parsed.ok ? parsed.metres : parsed.reason;
}

describe("parseLength reads", () => {
  test.each([
    [`12' 6"`, 3.81],
    [`12'6`, 3.81],
    [`12′ 6″`, 3.81],
    [`12’ 6”`, 3.81],
    ["12´ 6''", 3.81],
    ["12ft 6in", 3.81],
    ["12 ft 6 1/2 in", 3.8227],
    [`12' 6 1/2"`, 3.8227],
    [`12' 1/2"`, 3.6703],
    [`6"`, 0.1524],
    [`1/2"`, 0.0127],
    [`12' 6½"`, 3.8227],
    ["½ in", 0.0127],
    ["6 in", 0.1524],
    ["12.5'", 3.81],
    ["12,5 ft", 3.81],
    ["12 feet", 3.6576],
    ["1 foot 6 inches", 0.4572],
    ["3.2m", 3.2],
    ["3,2 m", 3.2],
    ["3.2 M", 3.2],
    [",5 m", 0.5],
    [".5 m", 0.5],
    ["3. m", 3],
    ["320cm", 3.2],
    ["3200 mm", 3.2],
    ["1.2 km", 1200],
    ["5 yd", 4.572],
    ["2 rods", 10.0584],
    ["1 mile", 1609.344],
    ["0", 0],
    ["  7.5  ", 7.5],
    ["3.2\u00A0m", 3.2],
    ["3.2\u202Fm", 3.2],
    ["３．２ｍ", 3.2],
    ["٣٫٢ m", 3.2],
    ["३.२ m", 3.2],
    ["1,320 ft", 402.336],
    ["2,640'", 804.672],
    ["1,320' 6\"", 402.4884],
    ["1,000 yd", 914.4],
    ["1,320.5 ft", 402.4884],
    ["1.320,5 m", 1320.5],
    ["1,320,000 mm", 1320],
    ["0,250 m", 0.25],
    ["12,3456 m", 12.3456],
    ["1.234", 1.234],
  ])("%s as %d m", (text, metres) => {
    expect(metresOf(text)).toBeCloseTo(metres, 9);
  });

  test("thousands of feet where the plan is in feet", () => {
    expect(metresOf("10,000", "ft")).toBeCloseTo(3048, 9);
    expect(metresOf("1.320", "ft")).toBeCloseTo(1.32 * 0.3048, 9);
  });

  test.each([
    ["1,320", "m", undefined, "write 1320 or 1.32"],
    ["1,320 m", "ft", undefined, "write 1320 m or 1.32 m"],
    ["1,234 km", "m", ".", "write 1234 km or 1.2340 km"],
    ["6,125 in", "m", ".", "write 6125 in or 6.1250 in"],
    ["1,320 ft", "m", ",", "write 1320 ft or 1.32 ft"],
    ["1.500 m", "m", ",", "write 1500 m or 1.5 m"],
    ["1'000", "m", undefined, "write 1000 with its unit, or 1' 0\""],
    ["1’000", "ft", undefined, "write 1000 with its unit, or 1' 0\""],
  ] as const)("not %s in %s with decimal mark %s: it is asked", (text, unit, mark, choice) => {
    const read = parseLength(text, unit, false, mark);
    expect(read.ok ? "read" : read.reason).toContain(choice);
  });

  test("neither reading of an asked length is asked again", () => {
    for (const text of ["1,320", "1,234 m", "6,125 in", "1,005 cm"]) {
      const read = parseLength(text, "m");
      const [, one, other] = (read.ok ? null : /write (.*) or (.*)$/.exec(read.reason)) ?? [];
      expect([one, other].map((each) => metresOf(each ?? ""))).toEqual([
        expect.any(Number),
        expect.any(Number),
      ]);
      for (const mark of [".", ","] as const) {
        expect(parseLength(other ?? "", "m", false, mark).ok).toBe(true);
      }
    }
  });

  test("a bare number in the plan's unit", () => {
    expect(metresOf("10", "m")).toBe(10);
    expect(metresOf("10", "ft")).toBeCloseTo(3.048, 12);
    expect(metresOf("6 1/2", "ft")).toBeCloseTo(1.9812, 12);
  });

  test("a sign only where one is asked for", () => {
    for (const text of ["-3 m", "\u22123 m"]) {
      expect(parseLength(text, "m").ok).toBe(false);
      expect(parseLength(text, "m", true)).toEqual({ ok: true, metres: -3 });
    }
    expect(parseLength(`-2' 3"`, "ft", true)).toEqual({ ok: true, metres: -0.6858 });
  });

  test("every decimal digit of every script", () => {
    let digits = 0;
    for (let code = 0x80; code <= 0x1ffff; code += 1) {
      const char = String.fromCodePoint(code);
      if (!/\p{Nd}/u.test(char)) continue;
      const metres = metresOf(char) as number;
      digits += metres;
      if (!Number.isInteger(metres) || metres < 0 || metres > 9)
        throw new Error(`${char}: ${metres}`);
    }
    // As many nines as eights and so on: the sum of all digits is 4.5 times their number.
    expect(digits % 45).toBe(0);
    expect(digits).toBeGreaterThan(45 * 50);
  });
});

describe("parseLength refuses, with a reason,", () => {
  test.each([
    "",
    "   ",
    "NaN",
    "Infinity",
    "1e999",
    "1e3",
    "0x10",
    "12abc",
    "12 m 3",
    "abc",
    "m",
    "'",
    "-3",
    "+3",
    "--3",
    "1.2.3",
    "1,2,3",
    "1,23,456.5",
    "12.34,5",
    "3..2",
    "3.,2",
    "3,,2",
    "1 200 m",
    `12' 12"`,
    `12' 6'`,
    `12" 6"`,
    "12ft 14in",
    "1/0",
    "1/0 in",
    "1//2",
    "101 km",
    "99999999999999999999",
    "3 furlongs",
    "3 m²",
    "five",
  ])("%j", (text) => {
    const parsed = parseLength(text, "m");
    expect(parsed.ok).toBe(false);
    expect(!parsed.ok && parsed.reason).toMatch(/\w/);
  });

  test("twelve inches and more beside feet, naming them", () => {
    expect(metresOf(`5' 14"`)).toMatch(/14/);
  });
});

describe("formatLength", () => {
  test.each([
    [3.2, "m", "3.2 m"],
    [3, "m", "3 m"],
    [10, "m", "10 m"],
    [0, "m", "0 m"],
    [-0.001, "m", "0 m"],
    [-1.25, "m", "-1.25 m"],
    [0.333333, "m", "0.33 m"],
    [3.81, "ft", `12' 6"`],
    [3.816, "ft", `12' 6 1/4"`],
    [3.6576, "ft", "12'"],
    [3.6639, "ft", `12' 1/4"`],
    [0.1524, "ft", `6"`],
    [0, "ft", `0"`],
    [-0.6858, "ft", `-2' 3"`],
    [3.657, "ft", "12'"],
  ] as const)("%d m in %s is %s", (metres, unit, text) => {
    expect(formatLength(metres, unit)).toBe(text);
  });
});

test.each([
  [2.74, "m", "2.7 m"],
  [99.96, "m", "100 m"],
  [123.4, "m", "123 m"],
  [2.7, "ft", `8' 10"`],
  [30.4, "ft", `99' 9"`],
  [40, "ft", "131'"],
] as const)("a distance of %d m in %s reads %s", (metres, unit, text) => {
  expect(formatDistance(metres, unit)).toBe(text);
});

test("areas", () => {
  expect(formatArea(12.34, "m")).toBe("12.3 m²");
  expect(formatArea(9.290304, "ft")).toBe("100 sq ft");
});

describe("formatMeasured", () => {
  test.each([
    [2.74, 7.62, true, "m", "2.7", "7.6"],
    [7.5999, 7.62, true, "m", "7.5", "7.6"],
    [7.6, 7.62, true, "m", "7.6", "7.62"],
    [7.619, 7.62, true, "m", "7.61", "7.62"],
    [7.6195, 7.62, true, "m", "7.61", "7.62"],
    [7.62, 7.62, false, "m", "7.6", "7.6"],
    [7.6199995, 7.62, false, "ft", "25'", "25'"],
    [4.572, 7.62, true, "ft", "15'", "25'"],
    [7.61, 7.62, true, "ft", `24' 11"`, "25'"],
    [7.625, 7.63, true, "ft", "25'", `25' 1/2"`],
    [7.6201, 7.6202, true, "ft", "just under 25'", "25'"],
    [52.4, 500, true, "ft", "171'", "1640'"],
    [499.9, 500, true, "ft", `1640' 1"`, `1640' 5"`],
    [0, 7.62, true, "m", "0", "7.6"],
    [0.01, 0.04, true, "m", "0.01", "0.04"],
    // A mile, 660 and 500 feet: whole metres, rounded up, never met by a metre that is not there.
    [1205.4, 1609.344, true, "m", "1205", "1610"],
    [1609.3, 1609.344, true, "m", "1609", "1610"],
    [1609.6, 1609.344, false, "m", "1609.6", "1609.3"],
    [1611, 1609.344, false, "m", "1611", "1610"],
    [201, 201.168, true, "m", "201", "202"],
    [152.4, 152.4, false, "m", "152.4", "152.4"],
  ] as const)("%d of %d m, short: %s, in %s", (measured, required, isShort, unit, left, right) => {
    expect(formatMeasured(measured, required, isShort, unit)).toEqual({
      measured: left,
      required: right,
      after: unit === "m" ? " m" : "",
    });
  });
});

test.each([
  [1609.344, "m", "1610 m"],
  [201.168, "m", "202 m"],
  [800, "m", "800 m"],
  [100.0000000001, "m", "100 m"],
  [7.62, "m", "7.6 m"],
  [1609.344, "ft", "5280'"],
] as const)("a distance of %d m to be kept is shown in %s as %s", (metres, unit, text) => {
  expect(formatRequired(metres, unit)).toBe(text);
});
