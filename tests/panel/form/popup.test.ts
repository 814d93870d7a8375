import { expect, test } from "vitest";
import { stepOf } from "../../../src/panel/form/popup.ts";

test("arrows go round the ends of a list, pages stop at them", () => {
  const from = (key: string, ...places: readonly number[]) =>
    places.map((at) => stepOf(key, at, 20));
  expect(from("ArrowDown", -1, 0, 19)).toEqual([0, 1, 0]);
  expect(from("ArrowUp", -1, 0, 19)).toEqual([19, 19, 18]);
  expect(from("PageDown", -1, 5, 15)).toEqual([7, 13, 19]);
  expect(from("PageUp", 3, 19)).toEqual([0, 11]);
  expect([stepOf("Home", 7, 20), stepOf("End", 7, 20)]).toEqual([0, 19]);
});

test("other keys lead nowhere, and nothing does in an empty list", () => {
  expect(stepOf("x", 0, 20)).toBeNull();
  expect(stepOf("ArrowDown", -1, 0)).toBeNull();
});
