import { expect, test } from "vitest";
import { lotInPlanFaults } from "../../../src/core/lots/lot-in-plan.ts";
import type { Lot } from "../../../src/core/model/plan.ts";
import { isoFromDay } from "../../../src/core/model/day.ts";
import { readPlan, writePlan } from "../../../src/core/model/read-plan.ts";
import { book, day, trialPlan } from "../../support/trial-plan.ts";

const good: Lot = {
  id: "lot-1",
  code: "TM-25-01",
  variety: "v-a",
  state: "in stock",
  harvestYear: 2025,
  amount: { unit: "g", value: 12 },
  stored: [{ place: "room", moisturePct: 8 }],
  tests: [{ id: "t1", date: day("2026-01-10"), sown: 50, sprouted: 45 }],
};
const other: Lot = { id: "lot-2", code: "Other", variety: "v-a", state: "in stock" };
const plan = {
  ...trialPlan({ a: { at: 0, kind: "tomato" } }),
  lots: [good, other],
  storagePlaces: [{ id: "room", name: "Room" }],
};
const tested = (more: object) => [
  { id: "t1", date: day("2026-01-10"), sown: 50, sprouted: 45, ...more },
];

test("a lot that can be kept has no faults, on the shelf or not yet", () => {
  expect(lotInPlanFaults(plan, good)).toEqual([]);
  expect(lotInPlanFaults(plan, { ...good, id: "lot-9", code: "NEW-1" })).toEqual([]);
});

test.each<[string, Partial<Lot>, string, string]>([
  [
    "a code used twice, whatever the case",
    { code: " other " },
    "code",
    "no other lot has (Other is taken)",
  ],
  ["no code", { code: "  " }, "code", "a code"],
  ["a deleted variety", { variety: "v-gone" }, "variety", "a variety of this plan"],
  ["a deleted place", { stored: [{ place: "shed" }] }, "stored[0].place", "a storage place"],
  ["a parent that is not there", { partOf: ["lot-7"] }, "partOf[0]", "another lot"],
  ["itself as its parent", { partOf: ["lot-1"] }, "partOf[0]", "another lot"],
  ["a negative amount", { amount: { unit: "g", value: -1 } }, "amount.value", "at least 0"],
  [
    "half a seed",
    { amount: { unit: "seeds", value: 1.5 } },
    "amount.value",
    "a whole number of seeds",
  ],
  [
    "more sprouted than sown",
    { tests: tested({ sprouted: 51 }) },
    "tests[0].sprouted",
    "at most the 50 seeds sown",
  ],
  [
    "a test before the harvest",
    { tests: tested({ date: day("2024-12-31") }) },
    "tests[0].date",
    "its harvest year 2025 or later",
  ],
  [
    "moisture over 100",
    { stored: [{ place: "room", moisturePct: 101 }] },
    "stored[0].moisturePct",
    "at most 100",
  ],
  [
    "treated and untreated at once",
    { treated: false, treatedWith: "thiram" },
    "treatedWith",
    "nothing",
  ],
])("%s is refused by its field, and so is the plan with it", (_, change, field, expected) => {
  const lot = { ...good, ...change };
  const faults = lotInPlanFaults(plan, lot);
  expect(faults.map((fault) => fault.field)).toContain(field);
  expect(faults.find((fault) => fault.field === field)?.expected).toContain(expected);
  if (change.partOf?.[0] === "lot-1") return;
  expect(isRead({})).toBe(true);
  expect(isRead(change)).toBe(false);
});

/** Whether a plan file is read with the change in its first lot. */
function isRead(change: Partial<Lot>): boolean {
  const file = JSON.parse(writePlan(plan)) as { lots: object[] };
  const tests = change.tests?.map((each) => ({ ...each, date: isoFromDay(each.date) }));
  file.lots[0] = { ...file.lots[0], ...change, ...(tests ? { tests } : {}) };
  return readPlan(JSON.stringify(file), "p", (id) => book.kind(id) !== undefined).ok;
}
