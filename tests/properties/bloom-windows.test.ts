/** What must hold of bloom windows, whatever their days. */
import * as fc from "fast-check";
import { expect, test } from "vitest";
import {
  type DayWindow,
  bloomAfter,
  firstFlowerFromDays,
  gapDays,
  overlapDays,
} from "../../src/core/calendar/bloom-window.ts";
import { repeatsIn } from "../../src/core/calendar/yearly.ts";
import { civilFromDay } from "../../src/core/model/day.ts";
import type { Planting } from "../../src/core/model/plan.ts";
import { pairsOf, trialPlan } from "../support/trial-plan.ts";

const day = fc.integer({ min: 18_000, max: 22_000 });
const window: fc.Arbitrary<DayWindow> = fc
  .tuple(day, fc.nat(120))
  .map(([first, length]) => ({ first, last: first + length }));
const range = fc
  .tuple(fc.nat(90), fc.nat(30))
  .map(([least, more]): [number, number] => [least, least + more]);

/** Standing of one tomato against another two metres off, by their bloom windows. */
function pairBetween(p: DayWindow, q: DayWindow) {
  const plan = trialPlan(
    {
      p: { at: 0, kind: "tomato", bloom: p },
      q: { at: 2, kind: "tomato", bloom: q },
    },
    [],
    // One season over all of them: dates of another would clear nothing.
    { season: { name: "", first: 16_000, last: 24_000 } },
  );
  const pairs = pairsOf(plan);
  return [pairs.get("p<-q"), pairs.get("q<-p")] as const;
}

test("overlap and gap are the same both ways, and never both", () => {
  fc.assert(
    fc.property(window, window, (a, b) => {
      expect(overlapDays(a, b)).toBe(overlapDays(b, a));
      expect(gapDays(a, b)).toBe(gapDays(b, a));
      expect(Math.min(overlapDays(a, b), gapDays(a, b))).toBe(0);
      let shared = 0;
      for (let each = a.first; each <= a.last; each += 1) {
        if (each >= b.first && each <= b.last) shared += 1;
      }
      expect(overlapDays(a, b)).toBe(shared);
      const [there, back] = pairBetween(a, b);
      expect(there?.overlapDays).toBe(back?.overlapDays);
      expect(there?.standing).toBe(back?.standing);
    }),
  );
});

test("shifting both windows changes nothing", () => {
  const shifted = ({ first, last }: DayWindow, by: number) => ({
    first: first + by,
    last: last + by,
  });
  const told = (a: DayWindow, b: DayWindow) =>
    pairBetween(a, b).map(
      (pair) => pair && [pair.standing, pair.overlapDays, pair.gapDays, pair.exposedShare],
    );
  fc.assert(
    fc.property(window, window, fc.integer({ min: -900, max: 900 }), (a, b, by) => {
      expect(told(shifted(a, by), shifted(b, by))).toEqual(told(a, b));
    }),
  );
});

test("widening a window never clears a conflict", () => {
  fc.assert(
    fc.property(window, window, fc.nat(40), fc.nat(40), (a, b, before, after) => {
      const wider = { first: a.first - before, last: a.last + after };
      expect(overlapDays(wider, b)).toBeGreaterThanOrEqual(overlapDays(a, b));
      expect(gapDays(wider, b)).toBeLessThanOrEqual(gapDays(a, b));
      const [narrowThere, narrowBack] = pairBetween(a, b);
      const [wideThere, wideBack] = pairBetween(wider, b);
      if (narrowThere?.standing === "conflict") expect(wideThere?.standing).toBe("conflict");
      if (narrowBack?.standing === "conflict") expect(wideBack?.standing).toBe("conflict");
    }),
  );
});

test("widening what is known of a kind never narrows its outer window, nor clears a conflict", () => {
  const widened = ([least, most]: readonly [number, number], by: number): [number, number] => [
    Math.max(0, least - by),
    most + by,
  ];
  const standing = (toFlower: [number, number], length: [number, number], other: DayWindow) => {
    const start: Planting["start"] = { method: "sown", date: 20_000 };
    const plan = trialPlan({
      p: {
        at: 0,
        kind: "tomato",
        bloom: null,
        start,
        variety: { sownToFlower: toFlower, bloomDays: length },
      },
      q: { at: 2, kind: "tomato", bloom: other },
    });
    return pairsOf(plan).get("p<-q")?.standing;
  };
  const length = range.map(([least, most]): [number, number] => [least + 1, most + 1]);
  fc.assert(
    fc.property(range, length, fc.nat(20), window, (toFlower, days, by, shape) => {
      const narrow = bloomAfter(firstFlowerFromDays(0, toFlower, "own"), [0, 0], days, "own").outer;
      const wideDays = widened(days, by).map((value) => Math.max(1, value)) as [number, number];
      const wide = bloomAfter(
        firstFlowerFromDays(0, widened(toFlower, by), "own"),
        [0, 0],
        wideDays,
        "own",
      ).outer;
      expect(wide.first).toBeLessThanOrEqual(narrow.first);
      expect(wide.last).toBeGreaterThanOrEqual(narrow.last);
      const other = {
        first: 20_000 + (shape.first % 200),
        last: 20_000 + (shape.first % 200) + 20,
      };
      if (standing(toFlower, days, other) === "conflict") {
        expect(standing(widened(toFlower, by), wideDays, other)).toMatch(/conflict|unknown/);
      }
    }),
  );
});

test("the likely window lies in the outer one", () => {
  fc.assert(
    fc.property(day, range, range, range, (start, toFlower, after, length) => {
      const days: [number, number] = [length[0] + 1, length[1] + 1];
      const { likely, outer } = bloomAfter(
        firstFlowerFromDays(start, toFlower, "own"),
        after,
        days,
        "own",
      );
      expect(outer.first).toBeLessThanOrEqual(likely.first);
      expect(outer.last).toBeGreaterThanOrEqual(likely.last);
    }),
  );
});

test("a yearly window keeps its dates and is found in every whole year", () => {
  fc.assert(
    fc.property(window, day, (yearly, first) => {
      const season = { first, last: first + 365 };
      const moved = repeatsIn(yearly, season)[0];
      expect(moved.first).toBeLessThanOrEqual(season.last);
      expect(moved.last).toBeGreaterThanOrEqual(season.first);
      const [was, is] = [civilFromDay(yearly.first), civilFromDay(moved.first)];
      expect(is.month).toBe(was.month);
      if (was.month !== 2) expect(is.day).toBe(was.day);
    }),
  );
});

/** Days of the calendar by the engine's own reckoning, counted one after the other. */
const DAY_MS = 86_400_000;
const dateOf = (each: number): Date => {
  const { year, month, day: dayOfMonth } = civilFromDay(each);
  return new Date(Date.UTC(year, month - 1, dayOfMonth));
};
const daysOn = (date: Date, days: number): string =>
  new Date(
    Date.UTC(date.getUTCFullYear(), date.getUTCMonth(), date.getUTCDate() + days),
  ).toISOString();

/** Within the trial plan's season, 2027, with room for the later one. */
const inSeason: fc.Arbitrary<DayWindow> = fc
  .tuple(fc.integer({ min: 20_819, max: 20_980 }), fc.nat(60))
  .map(([first, length]) => ({ first, last: first + length }));

test("last safe days lie within what each date by itself allows, by the engine's calendar", () => {
  fc.assert(
    fc.property(inSeason, fc.nat(60), fc.nat(40), (early, more, length) => {
      const guard = 7;
      const first = early.last + guard + 1 + more;
      const late = { first, last: first + length };
      for (const pair of pairBetween(early, late)) {
        const time = pair?.time;
        if (!pair || !time) throw new Error("not cleared by time");
        expect([pair.standing, pair.guardDays]).toEqual(["time", guard]);
        expect([time.earlier, time.later]).toEqual(["p", "q"]);
        const between = (dateOf(late.first).getTime() - dateOf(early.last).getTime()) / DAY_MS - 1;
        expect(pair.gapDays).toBe(between);
        const lastDay = dateOf(time.lastDay).toISOString();
        const firstDay = dateOf(time.firstDay).toISOString();
        // With the later opening as reckoned, the earlier must be over guard + 1 days before;
        // with the earlier over as reckoned, the later may open guard + 1 days after.
        expect(lastDay <= daysOn(dateOf(late.first), -guard - 1)).toBe(true);
        expect(firstDay >= daysOn(dateOf(early.last), guard + 1)).toBe(true);
        // And both kept to together, the days between are just those wanted.
        expect(firstDay).toBe(daysOn(dateOf(time.lastDay), guard + 1));
      }
      // Each bound is the last that holds: one day beyond it and time no longer clears.
      const until = { first: early.first, last: late.first - guard - 1 };
      expect(pairBetween(until, late)[0]?.standing).toBe("time");
      expect(pairBetween({ ...until, last: until.last + 1 }, late)[0]?.standing).toBe("conflict");
      const from = { first: early.last + guard + 1, last: late.last };
      expect(pairBetween(early, from)[0]?.standing).toBe("time");
      const sooner = { ...from, first: from.first - 1 };
      expect(pairBetween(early, sooner)[0]?.standing).toBe("conflict");
    }),
  );
});
