/** What is known of a bed, year by year. */
import { expect, test } from "vitest";
import { groundHistory, marksOn, yearsKnown } from "../../../src/core/ground/ground-history.ts";
import { book, day, layoutOf, squareAt, trialPlan } from "../../support/trial-plan.ts";

const plan = trialPlan(
  {
    peas: { at: 0, kind: "pea", bloom: null, start: { method: "sown", date: day("2027-03-10") } },
    leeks: { at: 0, kind: "leek", bloom: null, start: { method: "sown", date: day("2027-07-10") } },
    beside: { at: 1, kind: "beet" },
  },
  [],
  {
    earlierCrops: [
      { id: "c1", outline: squareAt(0), kind: "kale", year: 2024, varietyName: "Winter Lace" },
      {
        id: "c2",
        outline: squareAt(0.5),
        kind: "beet",
        year: 2026,
        wentToSeed: "yes",
        code: "B01-1",
        knownFrom: "record",
      },
      { id: "c3", outline: squareAt(1), kind: "onion", year: 2025 },
    ],
    groundMarks: [
      { id: "m1", outline: squareAt(0.9), disease: "white-rot", seenOn: day("2020-07-01") },
      { id: "m2", outline: squareAt(1), disease: "clubroot", seenOn: day("2020-07-01") },
    ],
  },
);

test("the bed's years: this season's plantings, the latest first, then earlier crops on its ground", () => {
  const rows = groundHistory(plan, layoutOf(plan), squareAt(0), book);
  expect(rows.map(({ id, year, kindName }) => [id, year, kindName])).toEqual([
    ["leeks", 2027, "leek"],
    ["peas", 2027, "pea"],
    ["c2", 2026, "beet"],
    ["c1", 2024, "kale"],
  ]);
  expect(rows[2]).toMatchObject({ wentToSeed: "yes", code: "B01-1", knownFrom: "record" });
  expect(rows[3]).toMatchObject({ wentToSeed: "unknown", varietyName: "Winter Lace" });
  expect(rows[0]).toMatchObject({ wentToSeed: null, isThisSeason: true });
});

test("what only touches the bed is not of it", () => {
  expect(marksOn(plan, squareAt(0)).map(({ id }) => id)).toEqual(["m1"]);
});

test("years there is something of, the latest first, each once", () => {
  const twice = [...plan.earlierCrops, ...plan.earlierCrops];
  expect(yearsKnown({ earlierCrops: twice })).toEqual([2026, 2025, 2024]);
});
