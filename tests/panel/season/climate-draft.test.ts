import { describe, expect, test } from "vitest";
import type { Climate } from "../../../src/core/model/plan.ts";
import {
  cellFaults,
  climateOf,
  draftOf,
  recordWords,
  withCell,
} from "../../../src/panel/season/climate-draft.ts";
import { climateWords } from "../../../src/panel/season/climate-words.ts";
import { day } from "../../support/small-plan.ts";

const twelve = (value: number) => Array<number>(12).fill(value);
const kept: Climate = {
  station: "Old Mill, 1991-2020",
  normals: { minC: twelve(-0.78), maxC: twelve(8.22) },
};

describe("a climate being typed", () => {
  test("is empty without one, and then there is nothing to keep", () => {
    const draft = draftOf(undefined, "C");
    expect(cellFaults(draft, "C")).toEqual([]);
    expect(climateOf(draft, "C", undefined)).toBeUndefined();
  });

  test("shows what is kept, and keeping it unchanged alters no digit", () => {
    const draft = draftOf(kept, "F");
    expect([draft.min[0], draft.max[0]]).toEqual(["30.6", "46.8"]);
    expect(climateOf({ ...draft, source: "own notes" }, "F", kept)).toEqual({
      ...kept,
      source: "own notes",
    });
  });

  test("takes one month anew", () => {
    const draft = withCell(draftOf(kept, "F"), "max", 3, "50");
    expect(climateOf(draft, "F", kept)?.normals?.maxC[3]).toBe(10);
    expect(climateOf(draft, "F", kept)?.normals?.maxC[4]).toBe(8.22);
  });

  test("says which month lacks what", () => {
    const half = withCell(draftOf(undefined, "C"), "min", 0, "3");
    const reasons = cellFaults(half, "C").map((fault) => fault.reason);
    expect(reasons).toHaveLength(23);
    expect(reasons[0]).toBe("January, highest: is missing");
    const wrong = withCell(withCell(draftOf(kept, "C"), "min", 5, "mild"), "min", 6, "30");
    expect(cellFaults(wrong, "C")).toEqual([
      { end: "min", month: 5, reason: 'June, lowest: "mild" is no temperature' },
      { end: "min", month: 6, reason: "July: the lowest is above the highest" },
    ]);
  });

  test("loses its normals when all fields are emptied; a record alone is a climate", () => {
    const empty = { ...draftOf(undefined, "C"), station: "Old Mill" };
    expect(climateOf(empty, "C", kept)).toBeUndefined();
    const days = { first: day("2027-04-01"), minC: [2, null], maxC: [12, 13] };
    expect(climateOf({ ...empty, days }, "C", kept)).toEqual({ station: "Old Mill", days });
    expect(recordWords(days)).toBe("1 Apr 2027 to 2 Apr 2027, 1 of 2 days");
  });

  test("fields that a newer program wrote are kept", () => {
    const newer = { ...kept, elevationM: 210 } as Climate;
    const draft = { ...draftOf(newer, "C"), station: "" };
    expect(climateOf(draft, "C", newer)).toEqual({ normals: kept.normals, elevationM: 210 });
  });
});

test("a climate is named in a few words", () => {
  expect(climateWords(undefined)).toBe("none: bloom is counted in days");
  expect(climateWords(kept)).toBe("Old Mill, 1991-2020: monthly normals");
  expect(climateWords({ days: { first: 0, minC: [], maxC: [] } })).toBe("a record of days");
});
