import { describe, expect, test } from "vitest";
import { dayFromIso } from "../../../src/core/model/day.ts";
import type { Lot, Plan } from "../../../src/core/model/plan.ts";
import {
  type ShelfRow,
  foundRows,
  margin,
  needOfLots,
  shelfRows,
  sortedRows,
} from "../../../src/panel/shelf/shelf-rows.ts";
import { sowingRows } from "../../../src/core/lots/sowing.ts";
import { book, layoutOf, trialPlan } from "../../support/trial-plan.ts";

const TODAY = dayFromIso("2027-01-10") ?? 0;

function lotOf(code: string, more: Partial<Lot> = {}): Lot {
  return { id: `lot-${code}`, code, variety: "amber", state: "in stock", ...more };
}

const test1 = (iso: string, sprouted: number) => ({
  id: "t",
  date: dayFromIso(iso) ?? 0,
  sown: 100,
  sprouted,
});

const lots: readonly Lot[] = [
  lotOf("B10", { harvestYear: 2024, tests: [test1("2026-12-01", 95)] }),
  lotOf("B2", { harvestYear: 2026, note: "from the Béla plot", tests: [test1("2026-12-01", 60)] }),
  lotOf("B3", { state: "used up" }),
  lotOf("B4", {
    harvestYear: 2025,
    stored: [{ place: "tin" }],
    amount: { unit: "seeds", value: 5 },
  }),
];
const base = trialPlan({ a: { at: 0, kind: "tomato", variety: { id: "amber" }, plants: 20 } });
const plan: Plan = {
  ...base,
  varieties: [{ id: "amber", name: "Amber Lantern", kind: "tomato" }],
  storagePlaces: [{ id: "tin", name: "Tin in the pantry" }],
  lots,
};
const rows = shelfRows(plan, book);
const codes = (listed: readonly { readonly lot: Lot }[]) => listed.map(({ lot }) => lot.code);

describe("the shelf as a list", () => {
  test("it is found by every word, with or without marks, in any order", () => {
    expect(codes(foundRows(rows, "bela AMBER", "all"))).toEqual(["B2"]);
    expect(codes(foundRows(rows, "pantry", "all"))).toEqual(["B4"]);
    expect(codes(foundRows(rows, "lycopersicum", "all"))).toHaveLength(4);
    expect(foundRows(rows, "nobody", "all")).toEqual([]);
  });

  test("what is used up is shown only when it is asked for", () => {
    expect(codes(foundRows(rows, "", "in stock"))).toEqual(["B10", "B2", "B4"]);
    expect(codes(foundRows(rows, "", "gone"))).toEqual(["B3"]);
  });

  test("codes are sorted with their numbers, ages with the unknown last", () => {
    expect(codes(sortedRows(rows, "code", new Map(), TODAY))).toEqual(["B2", "B3", "B4", "B10"]);
    expect(codes(sortedRows(rows, "age", new Map(), TODAY))).toEqual(["B10", "B4", "B2", "B3"]);
  });

  test("the lot that is under its standard already comes before the sound ones", () => {
    // Tomato: 75 %, 7 CFR 201.31; 60 of 100 is 50 to 70 % (Clopper and Pearson).
    const sorted = sortedRows(rows, "weakest first", new Map(), TODAY);
    expect(codes(sorted)[0]).toBe("B2");
    expect(margin(rows[1] as ShelfRow, TODAY)).toBeLessThan(0);
    expect(margin(rows[0] as ShelfRow, TODAY)).toBeGreaterThan(0);
  });

  test("the lot that reaches least for what is to be sown comes first", () => {
    const need = new Map([["lot-B4", 50]]);
    expect(codes(sortedRows(rows, "short first", need, TODAY))[0]).toBe("B4");
  });

  test("need is summed over the plantings of a layout", () => {
    const need = needOfLots(sowingRows(plan, layoutOf(plan), book));
    // 20 plants and one in ten to spare, 0.6 of the best lot's seed that germinates come up.
    const total = [...need.values()].reduce((sum, seeds) => sum + seeds, 0);
    expect(total).toBeGreaterThanOrEqual(Math.ceil(22 / 0.6));
    expect(total).toBeLessThan(22 / 0.6 / 0.8);
  });

  test("an edit of one lot makes one row anew", () => {
    const [first, ...others] = lots;
    if (!first) throw new Error("no lot");
    const next = shelfRows({ ...plan, lots: [{ ...first, note: "new" }, ...others] }, book);
    expect(next[0]).not.toBe(rows[0]);
    expect(next.slice(1).every((row, at) => row === rows[at + 1])).toBe(true);
  });
});
