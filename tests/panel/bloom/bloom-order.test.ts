import { describe, expect, test } from "vitest";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import { bloomLines, linesHeld } from "../../../src/panel/bloom/bloom-order.ts";
import { bloomRows, nextChange } from "../../../src/panel/bloom/bloom-rows.ts";
import { startWords } from "../../../src/panel/bloom/bloom-words.ts";
import { book, day, plantingAt, smallPlan } from "../../support/small-plan.ts";

const window = (first: string, last: string) => ({ first: day(first), last: day(last) });

/** Two tomatoes with dates about a lettuce, and a tomato without any. */
function strip() {
  const { plan, layout } = smallPlan([
    plantingAt(1, 0, { bloom: window("2027-07-01", "2027-07-31") }),
    plantingAt(2, 5, { bloom: window("2027-06-10", "2027-07-05") }),
    plantingAt(3, 10, { bloom: window("2027-06-20", "2027-06-25") }),
    plantingAt(4, 15, { variety: "variety-1" }),
  ]);
  const varieties = plan.varieties.map((variety) =>
    variety.id === "variety-3" ? { ...variety, kind: "lettuce" } : variety,
  );
  return bloomRows(runChecks({ ...plan, varieties }, layout, book), []);
}

const ids = (lines: readonly { readonly id: string }[]) => lines.map((line) => line.id);

describe("lines of the strip", () => {
  test("lie in order of first flower, undated ones last", () => {
    expect(ids(bloomLines(strip(), "flower"))).toEqual([
      "planting-2",
      "planting-3",
      "planting-1",
      "planting-4",
    ]);
  });

  test("or by crossing group, each under its name", () => {
    const lines = bloomLines(strip(), "group");
    const [tomatoes, , , , lettuces] = lines;
    expect(ids(lines).filter((id) => !id.startsWith("group:"))).toEqual([
      "planting-2",
      "planting-1",
      "planting-4",
      "planting-3",
    ]);
    expect(tomatoes).toMatchObject({ kind: "heading", text: expect.stringContaining("tomato") });
    expect(lettuces).toMatchObject({ kind: "heading", text: expect.stringContaining("lettuce") });
  });

  test("stay where they were while something is dragged", () => {
    const lines = bloomLines(strip(), "flower");
    const before = ["planting-1", "planting-3", "planting-2"];
    expect(ids(linesHeld(lines, before))).toEqual([...before, "planting-4"]);
  });
});

test("the next change is the next day something opens or has ended", () => {
  const { rows } = strip();
  expect(nextChange(rows, day("2027-01-01"))).toBe(day("2027-06-10"));
  expect(nextChange(rows, day("2027-06-10"))).toBe(day("2027-06-20"));
  expect(nextChange(rows, day("2027-06-20"))).toBe(day("2027-06-26"));
  expect(nextChange(rows, day("2027-08-01"))).toBeNull();
});

test("a bar can be moved where a start is counted from, not where dates are typed", () => {
  const start = { method: "sown", date: day("2027-05-28") } as const;
  const { plan, layout } = smallPlan([
    plantingAt(1, 0, { start }),
    plantingAt(2, 5, { start, bloom: window("2027-06-10", "2027-07-05") }),
    plantingAt(3, 9, { start: { ...start, method: "transplanted" } }),
  ]);
  const varieties = plan.varieties.map((variety) => ({
    ...variety,
    sownToFlower: [60, 70] as const,
    transplantedToFlower: [30, 40] as const,
  }));
  const { rows } = bloomRows(runChecks({ ...plan, varieties }, layout, book), []);
  const words = new Map(rows.map((row) => [row.id, startWords(row)]));
  expect(words.get("planting-1")).toBe("sown 28 May");
  expect(words.get("planting-2")).toBe("");
  expect(words.get("planting-3")).toBe("set out 28 May");
});

test("maize in conflict is barred where silks and tassels meet, not whole blooms", () => {
  const { plan, layout } = smallPlan([
    plantingAt(1, 0, { start: { method: "sown", date: day("2027-05-01") } }),
    plantingAt(2, 5, { start: { method: "sown", date: day("2027-05-12") } }),
  ]);
  const varieties = plan.varieties.map((variety) => ({ ...variety, kind: "maize" }));
  const result = runChecks({ ...plan, varieties }, layout, book);
  const [early, late] = ["planting-1", "planting-2"].map((id) => result.standById.get(id));
  const silks = late?.receives?.outer;
  const tassels = early?.sheds?.outer;
  const otherSilks = early?.receives?.outer;
  const otherTassels = late?.sheds?.outer;
  if (!silks || !tassels || !otherSilks || !otherTassels) throw new Error("no windows");
  const { rows } = bloomRows(result, []);
  const [overlap] = rows.find((row) => row.id === "planting-1")?.overlaps ?? [];
  const ways = [
    Math.max(silks.first, tassels.first),
    Math.max(otherSilks.first, otherTassels.first),
  ];
  expect(overlap?.first).toBe(Math.min(...ways));
  expect(overlap?.last).toBeGreaterThanOrEqual(Math.min(silks.last, tassels.last));
});
