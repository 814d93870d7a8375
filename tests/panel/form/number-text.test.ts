import { describe, expect, test } from "vitest";
import { readCount, readRatio, readTurn, turnText } from "../../../src/panel/form/number-text.ts";

describe("counts", () => {
  test("whole numbers of any script are read", () => {
    expect(readCount(" 24 ")).toEqual({ ok: true, value: 24 });
    expect(readCount("１２")).toEqual({ ok: true, value: 12 });
  });
  test.each(["", " ", "-3", "1.5", "0x10", "12abc", "1e3", "NaN", "9999999"])(
    "%j is refused with a reason",
    (text) => {
      const read = readCount(text);
      expect(read.ok).toBe(false);
    },
  );
});

describe("turns", () => {
  test("degree signs, decimal commas and the minus sign are read", () => {
    expect(readTurn("12,5°")).toEqual({ ok: true, value: 12.5 });
    expect(readTurn("\u221230 deg")).toEqual({ ok: true, value: -30 });
    expect(readTurn("0")).toEqual({ ok: true, value: 0 });
  });
  test.each(["", "north", "361", "1.2.3", "--4", "."])("%j is refused", (text) => {
    expect(readTurn(text).ok).toBe(false);
  });
  test("a shown turn reads back as itself", () => {
    for (const turn of [-180, -12.5, 0, 7.3, 90, 359.9]) {
      expect(readTurn(turnText(turn))).toEqual({ ok: true, value: turn });
    }
  });
  test("a turn of next to nothing is not shown as minus nothing", () => {
    expect(turnText(-0.01)).toBe("0°");
  });
});

test("ratios are read with and without their one", () => {
  expect(readRatio("1:50")).toEqual({ ok: true, value: 50 });
  expect(readRatio("1 : 72")).toEqual({ ok: true, value: 72 });
  expect(readRatio("125")).toEqual({ ok: true, value: 125 });
  expect(readRatio("0").ok).toBe(false);
  expect(readRatio("2:50").ok).toBe(false);
  expect(readRatio("1:99999").ok).toBe(false);
});
