import { expect, test } from "vitest";
import {
  CARROT_COLD,
  carrotColdOfDay,
  onionColdOfDay,
  onionVernalized,
} from "../../../src/core/calendar/vernalization.ts";

// Atherton et al. 1990, J. Hort. Sci. 65:423: cardinal temperatures -1, 6.5 and 16 C.
test.each([
  [4, 25.2, 67.2],
  [6.5, 16.8, 44.8],
  [10, 26.6, 70.9],
])("carrot at %d C can flower after %d days, 90 %% after %d", (celsius, first, most) => {
  expect(CARROT_COLD.first / carrotColdOfDay(celsius)).toBeCloseTo(first, 1);
  expect(CARROT_COLD.most / carrotColdOfDay(celsius)).toBeCloseTo(most, 1);
});

test("carrot feels no cold at or beyond its limits", () => {
  expect(carrotColdOfDay(-1)).toBe(0);
  expect(carrotColdOfDay(16)).toBe(0);
});

// Streck 2003: f(VD) = VD^5 / (30^5 + VD^5).
test.each([
  [15, 0.0303],
  [20, 0.1164],
  [30, 0.5],
  [40, 0.8082],
  [60, 0.9697],
])("onion after %d effective days is vernalized %d", (days, share) => {
  expect(onionVernalized(days)).toBeCloseTo(share, 4);
});

test("a day at 10 C counts in full for onion, at 5 and 13 C in part", () => {
  expect(onionColdOfDay(10)).toBeCloseTo(1, 9);
  expect(onionColdOfDay(5)).toBeCloseTo(0.5901, 3);
  expect(onionColdOfDay(13)).toBeCloseTo(0.7768, 3);
});
