import { expect, test } from "vitest";
import { rangeText, readRange } from "../../../src/panel/form/range-text.ts";

test("one number or two are read as a range of days", () => {
  expect(readRange("60")).toEqual({ ok: true, value: [60, 60] });
  expect(readRange("55-65 days")).toEqual({ ok: true, value: [55, 65] });
  expect(readRange("55 to 65")).toEqual({ ok: true, value: [55, 65] });
});

test("ranges the wrong way round and other texts are refused", () => {
  expect(readRange("65-55").ok).toBe(false);
  expect(readRange("about 60").ok).toBe(false);
  expect(readRange("").ok).toBe(false);
});

test("a shown range reads back as itself", () => {
  expect(readRange(rangeText([20, 40]))).toEqual({ ok: true, value: [20, 40] });
  expect(readRange(rangeText([7, 7]))).toEqual({ ok: true, value: [7, 7] });
});
