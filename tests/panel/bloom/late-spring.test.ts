import { describe, expect, test } from "vitest";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import { springWords } from "../../../src/panel/bloom/bloom-words.ts";
import { springTest } from "../../../src/panel/bloom/late-spring.ts";
import { book, day, plantingAt, smallPlan } from "../../support/small-plan.ts";

const window = (first: string, last: string) => ({ first: day(first), last: day(last) });

/** Three tomatoes one after the other: 7 and 10 days between. */
const { plan, layout } = smallPlan([
  plantingAt(1, 0, { bloom: window("2027-06-01", "2027-06-20") }),
  plantingAt(2, 1.5, { bloom: window("2027-06-28", "2027-07-10") }),
  plantingAt(3, 3, { bloom: window("2027-07-21", "2027-08-10") }),
]);
const { pairs } = runChecks(plan, layout, book);

describe("a late spring", () => {
  test("undoes the pairs with less slack than the shift, each told once, the tightest first", () => {
    expect(springTest(pairs, 0)).toMatchObject({ lost: [] });
    expect(springTest(pairs, 1).lost).toEqual([{ a: "planting-1", b: "planting-2", slackDays: 0 }]);
    expect(springTest(pairs, 4).lost).toEqual([
      { a: "planting-1", b: "planting-2", slackDays: 0 },
      { a: "planting-2", b: "planting-3", slackDays: 3 },
    ]);
  });

  test("is put in words", () => {
    const { resting } = springTest(pairs, 0);
    expect(springWords(springTest(pairs, 0))).toBe(
      `All ${resting} pairs that rest on time would stay clear.`,
    );
    expect(springWords(springTest(pairs, 4))).toBe(
      `2 of ${resting} pairs that rest on time would fail:`,
    );
    expect(springWords({ resting: 0, lost: [] })).toBe("No pair rests on time alone.");
    expect(springWords({ resting: 1, lost: [] })).toBe(
      "The one pair that rests on time would stay clear.",
    );
    expect(springWords({ resting: 1, lost: [{ a: "a", b: "b", slackDays: 0 }] })).toBe(
      "The one pair that rests on time would fail:",
    );
  });
});
