/** Two blooms held against each other, against counting the days of the calendar one by one. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Bloom, DayWindow } from "../../../src/core/calendar/bloom-window.ts";
import {
  bloomParting,
  daysBetween,
  daysTogether,
  openDays,
} from "../../../src/core/calendar/compare-bloom.ts";

const window = fc
  .tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 12 }))
  .map(([first, length]): DayWindow => ({ first, last: first + length }));

function bloom(outer: DayWindow, more: Partial<Bloom> = {}): Bloom {
  return { likely: outer, outer, counted: "days", opens: "own", closes: "own", ...more };
}

function daysOf(...windows: readonly DayWindow[]): ReadonlySet<number> {
  const days = new Set<number>();
  for (const { first, last } of windows) for (let day = first; day <= last; day += 1) days.add(day);
  return days;
}

test("property: one window each, as a calendar counts them", () => {
  fc.assert(
    fc.property(window, window, (one, other) => {
      const [mine, theirs] = [daysOf(one), daysOf(other)];
      const shared = [...mine].filter((day) => theirs.has(day)).length;
      expect(daysTogether(bloom(one), bloom(other))).toBe(shared);
      const [early, late] = one.last <= other.last ? [mine, theirs] : [theirs, mine];
      const [end, begin] = [Math.max(...early), Math.min(...late)];
      const between = [...daysOf({ first: end + 1, last: begin - 1 })].length;
      expect(daysBetween(bloom(one), bloom(other))).toBe(shared > 0 ? 0 : between);
      expect(openDays(bloom(one), bloom(other))).toBe(mine.size);
    }),
  );
});

test("property: a perennial is compared in every year it is told for", () => {
  fc.assert(
    fc.property(window, window, (one, other) => {
      const nextYear = { first: one.first + 365, last: one.last + 365 };
      const perennial = bloom(one, { also: [nextYear] });
      const late = bloom({ first: other.first + 365, last: other.last + 365 });
      expect(daysTogether(perennial, late)).toBe(daysTogether(bloom(one), bloom(other)));
      expect(daysTogether(late, perennial)).toBe(daysTogether(perennial, late));
      expect(daysBetween(perennial, late)).toBe(daysBetween(bloom(one), bloom(other)));
      expect(openDays(perennial, late)).toBe(2 * (one.last - one.first + 1));
    }),
  );
});

test("one counted in heat beside one counted in days: the widest of both reckonings counts", () => {
  const heat = bloom({ first: 10, last: 14 }, { counted: "heat", widest: { first: 8, last: 20 } });
  const days = bloom({ first: 18, last: 25 });
  expect(daysTogether(heat, days)).toBe(3);
  expect(daysTogether(heat, bloom({ first: 18, last: 25 }, { counted: "heat" }))).toBe(0);
  expect(openDays(heat, days)).toBe(13);
});

describe("what parts two blooms", () => {
  test("property: as long as both keep the days told, the guard days lie between", () => {
    fc.assert(
      fc.property(window, window, fc.integer({ min: 0, max: 14 }), (one, other, guard) => {
        const gap = daysBetween(bloom(one), bloom(other));
        fc.pre(daysTogether(bloom(one), bloom(other)) === 0 && gap >= guard);
        const parting = bloomParting(bloom(one), bloom(other), guard);
        const [early, late] = parting.isFirstEarlier ? [one, other] : [other, one];
        expect(early.last).toBeLessThanOrEqual(parting.lastDay);
        expect(late.first).toBeGreaterThanOrEqual(parting.firstDay);
        expect(parting.firstDay - parting.lastDay - 1).toBe(guard);
        // What is to spare is shared out: to the earlier never more than to the later.
        const [spareEarly, spareLate] = [
          parting.lastDay - early.last,
          late.first - parting.firstDay,
        ];
        expect(spareEarly + spareLate).toBe(gap - guard);
        expect([0, 1]).toContain(spareLate - spareEarly);
      }),
    );
  });

  test("rests on the last day of the earlier and the first of the later, the less sure of them", () => {
    const early = bloom({ first: 0, last: 5 }, { opens: "rule of thumb", closes: "seen" });
    const late = bloom({ first: 20, last: 30 }, { opens: "published", closes: "rule of thumb" });
    for (const [a, b] of [
      [early, late],
      [late, early],
    ] as const) {
      const parting = bloomParting(a, b, 7);
      expect([parting.closes, parting.opens, parting.basis]).toEqual([
        "seen",
        "published",
        "published",
      ]);
      expect(parting.isFirstEarlier).toBe(a === early);
    }
  });
});
