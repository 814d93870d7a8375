import { describe, expect, test } from "vitest";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import { bloomRows, openOn } from "../../../src/panel/bloom/bloom-rows.ts";
import { bloomRowWords } from "../../../src/panel/bloom/bloom-words.ts";
import { book, day, plantingAt, smallPlan } from "../../support/small-plan.ts";

const window = (first: string, last: string) => ({ first: day(first), last: day(last) });

function rowsOf(selection: readonly string[], third = window("2027-06-20", "2027-07-10")) {
  const { plan, layout } = smallPlan([
    plantingAt(1, 0, { bloom: window("2027-07-01", "2027-07-31") }),
    plantingAt(2, 1.2, { bloom: window("2027-06-10", "2027-07-05") }),
    plantingAt(3, 2.4, { bloom: third }),
  ]);
  return bloomRows(runChecks(plan, layout, book), selection);
}

describe("rows of the bloom strip", () => {
  test("come in order of first flower", () => {
    expect(rowsOf([]).rows.map((row) => row.id)).toEqual([
      "planting-2",
      "planting-3",
      "planting-1",
    ]);
  });
  test("with nothing selected carry the overlaps of every conflict, joined", () => {
    const [second] = rowsOf([]).rows;
    expect(second?.overlaps).toEqual([window("2027-06-20", "2027-07-05")]);
  });
  test("with one selected keep the overlaps with that one apart from the others", () => {
    const { rows } = rowsOf(["planting-1"]);
    expect(rows.find((row) => row.id === "planting-2")?.otherOverlaps).toEqual([
      window("2027-06-20", "2027-07-05"),
    ]);
    expect(rows.find((row) => row.id === "planting-2")?.overlaps).toEqual([
      window("2027-07-01", "2027-07-05"),
    ]);
    expect(rows.find((row) => row.id === "planting-1")?.isSelected).toBe(true);
  });
  test("keep windows that do not meet apart", () => {
    const { rows } = rowsOf([], window("2027-08-20", "2027-08-30"));
    expect(rows.find((row) => row.id === "planting-3")?.overlaps).toEqual([]);
  });
  test("say what they show", () => {
    const [second] = rowsOf(["planting-1"]).rows;
    expect(second && bloomRowWords(second)).toBe(
      "B01-2 Old Ferry, in flower 10 Jun to 5 Jul, rests on: own, open together with a conflicting stand 1 Jul to 5 Jul, in another conflict 20 Jun to 5 Jul",
    );
  });
  test("are counted by the day", () => {
    const { rows } = rowsOf([]);
    expect(openOn(rows, day("2027-07-05"))).toBe(3);
    expect(openOn(rows, day("2027-06-10"))).toBe(1);
    expect(openOn(rows, day("2027-05-01"))).toBe(0);
  });
});

test("a planting without dates is listed apart, one that is cut is not listed", () => {
  const { plan, layout } = smallPlan([plantingAt(1, 0), plantingAt(2, 1.2, { flowering: "cut" })]);
  const { rows, undated } = bloomRows(runChecks(plan, layout, book), []);
  expect(rows).toEqual([]);
  expect(undated).toEqual([
    { id: "planting-1", code: "B01-1", name: "Amber Lantern", group: "tomato", why: "no-start" },
  ]);
});
