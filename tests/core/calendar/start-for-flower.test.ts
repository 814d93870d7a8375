import { expect, test } from "vitest";
import { startForFlower } from "../../../src/core/calendar/start-for-flower.ts";

const within = { first: 100, last: 300 };

test("counted in days the start lies as many days before the flower", () => {
  const flower = (start: number) => start + 60;
  expect(startForFlower(200, within, flower)).toBe(140);
  expect(startForFlower(120, within, flower)).toBe(100);
  expect(startForFlower(900, within, flower)).toBe(300);
});

test("counted in heat the nearest start is found, of two as near the earlier", () => {
  // Two days of sowing are one of bloom.
  const flower = (start: number) => 150 + Math.floor(start / 2);
  expect(startForFlower(220, within, flower)).toBe(140);
  const wide = (start: number) => start * 3;
  expect(startForFlower(601, within, wide)).toBe(200);
  expect(startForFlower(602, within, wide)).toBe(201);
});

test("a start that never flowers counts as too late", () => {
  const flower = (start: number) => (start <= 250 ? start + 60 : null);
  expect(startForFlower(500, within, flower)).toBe(250);
});
