import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type DayWindow,
  bloomAfter,
  bloomFromDates,
  firstFlowerFromDays,
  gapDays,
  overlapDays,
} from "../../../src/core/calendar/bloom-window.ts";

const window = (first: number, last: number): DayWindow => ({ first, last });

describe("two windows", () => {
  test.each([
    ["the same day", window(5, 5), window(5, 5), 1, 0],
    ["the same window", window(1, 10), window(1, 10), 10, 0],
    ["one day shared", window(1, 5), window(5, 9), 1, 0],
    ["one inside the other", window(1, 30), window(10, 12), 3, 0],
    ["next to each other", window(1, 5), window(6, 9), 0, 0],
    ["one day between", window(1, 5), window(7, 9), 0, 1],
    ["a week between", window(1, 5), window(13, 20), 0, 7],
    ["before day zero", window(-9, -5), window(-3, 0), 0, 1],
  ])("%s: %s %s share %d, %d between", (_, a, b, shared, between) => {
    expect([overlapDays(a, b), gapDays(a, b)]).toEqual([shared, between]);
    expect([overlapDays(b, a), gapDays(b, a)]).toEqual([shared, between]);
  });

  test("counted day by day come to the same", () => {
    const anyWindow = fc
      .tuple(fc.integer({ min: -30, max: 30 }), fc.nat(20))
      .map(([first, length]) => window(first, first + length));
    fc.assert(
      fc.property(anyWindow, anyWindow, (a, b) => {
        let shared = 0;
        let between = 0;
        for (let day = -40; day <= 60; day += 1) {
          const [inA, inB] = [a, b].map(({ first, last }) => first <= day && day <= last);
          if (inA && inB) shared += 1;
          const isAfterOne = day > Math.min(a.last, b.last);
          if (!inA && !inB && isAfterOne && day < Math.max(a.first, b.first)) between += 1;
        }
        expect([overlapDays(a, b), gapDays(a, b)]).toEqual([shared, between]);
      }),
    );
  });
});

describe("a predicted bloom", () => {
  const first = firstFlowerFromDays(100, [60, 70], "own");

  test("begins between the least and the most days after the start", () => {
    expect(first).toEqual({
      earliest: 160,
      likely: 165,
      latest: 170,
      counted: "days",
      basis: "own",
    });
  });

  test("lasts whole days, both ends included", () => {
    expect(bloomAfter(first, [0, 0], [20, 30], "own")).toEqual({
      likely: { first: 165, last: 189 },
      outer: { first: 160, last: 199 },
      counted: "days",
      opens: "own",
      closes: "own",
    });
    expect(bloomAfter(firstFlowerFromDays(0, [5, 5], "own"), [0, 0], [1, 1], "own")).toEqual({
      likely: { first: 5, last: 5 },
      outer: { first: 5, last: 5 },
      counted: "days",
      opens: "own",
      closes: "own",
    });
  });

  test("of a part that opens later is shifted by its own range", () => {
    expect(bloomAfter(first, [2, 4], [10, 10], "own")).toEqual({
      likely: { first: 168, last: 177 },
      outer: { first: 162, last: 183 },
      counted: "days",
      opens: "own",
      closes: "own",
    });
  });

  test("keeps what is likely within what is possible", () => {
    const range = fc
      .tuple(fc.nat(90), fc.nat(60))
      .map(([least, more]): [number, number] => [least, least + more]);
    const length = range.map(([least, most]): [number, number] => [least + 1, most + 1]);
    fc.assert(
      fc.property(range, range, length, (toFlower, after, days) => {
        const { likely, outer } = bloomAfter(
          firstFlowerFromDays(0, toFlower, "own"),
          after,
          days,
          "own",
        );
        expect(likely.first).toBeGreaterThanOrEqual(outer.first);
        expect(likely.last).toBeLessThanOrEqual(outer.last);
        expect(likely.last).toBeGreaterThanOrEqual(likely.first);
      }),
    );
  });
});

test("own dates are taken as certain", () => {
  const own = window(7, 9);
  expect(bloomFromDates(own)).toEqual({
    likely: own,
    outer: own,
    counted: "own dates",
    opens: "own",
    closes: "own",
  });
});
