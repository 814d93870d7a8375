/** Lots made in winter on the shelf of last season's plan, brought after the next one. */
import { expect, test } from "vitest";
import type { Lot, Plan } from "../../../src/core/model/plan.ts";
import { readPlan, writePlan } from "../../../src/core/model/read-plan.ts";
import { lotsFromBefore, takeLots } from "../../../src/core/seasons/lots-from-before.ts";
import { nextSeason } from "../../../src/core/seasons/next-season.ts";
import { offeredChoices } from "../../../src/core/seasons/season-choices.ts";
import { day, trialPlan } from "../../support/trial-plan.ts";

const lot = (id: string, code: string, more: Partial<Lot> = {}): Lot => ({
  id,
  code,
  variety: "v-p",
  state: "in stock",
  ...more,
});

const shelf = { id: "place-1", name: "Shelf" };
const before: Plan = trialPlan({ p: { at: 0, kind: "common-bean" } }, [], {
  lots: [lot("lot-1", "P-26", { harvestYear: 2026 })],
  storagePlaces: [shelf],
});
const next = nextSeason(before, offeredChoices(before, { id: "next", on: day("2028-01-10") }));

function taken(plan: Plan, from: Plan): Plan {
  const after = takeLots(lotsFromBefore(plan, from), "Take").apply(plan);
  const read = readPlan(writePlan(after), "after.json", () => true);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

test("what both shelves have is not taken twice, and nothing changes", () => {
  expect(lotsFromBefore(next, before)).toEqual({
    lots: [],
    places: [],
    varieties: [],
    ownKinds: [],
    recoded: [],
  });
  expect(takeLots(lotsFromBefore(next, before), "Take").apply(next)).toBe(next);
});

test("a lot cleaned after the step comes with its place, its mother and an id of its own", () => {
  const later: Plan = {
    ...before,
    lots: [
      ...before.lots,
      lot("lot-2", "P-27", { harvestYear: 2027, partOf: ["lot-1"], stored: [{ place: "tin" }] }),
      lot("lot-9", "P-28", { harvestYear: 2027, grownFrom: ["lot-2"] }),
    ],
    storagePlaces: [shelf, { id: "tin", name: "Tin" }],
  };
  // Meanwhile the next plan numbered a lot of its own.
  const busy: Plan = { ...next, lots: [...next.lots, lot("lot-2", "P-swap")] };
  const after = taken(busy, later);
  expect(after.lots.slice(0, 2)).toEqual(busy.lots);
  expect(after.lots.slice(2)).toEqual([
    lot("lot-3", "P-27", { harvestYear: 2027, partOf: ["lot-1"], stored: [{ place: "tin" }] }),
    lot("lot-9", "P-28", { harvestYear: 2027, grownFrom: ["lot-3"] }),
  ]);
  expect(after.storagePlaces).toEqual(later.storagePlaces);
  expect(lotsFromBefore(after, later).lots, "a second time").toEqual([]);
});

test("a variety that the next plan has lost comes again, with the lot alone", () => {
  const later: Plan = {
    ...before,
    varieties: [
      ...before.varieties,
      { id: "v-new", name: "Late Comer", kind: "beet", wantedPlants: 40, lots: ["lot-9"] },
    ],
    lots: [...before.lots, lot("lot-9", "LC-27", { variety: "v-new" })],
  };
  const after = taken(next, later);
  expect(after.varieties.at(-1)).toEqual({ id: "v-new", name: "Late Comer", kind: "beet" });
  expect(after.lots.at(-1)).toMatchObject({ code: "LC-27", variety: "v-new" });
});

test("one code for two different lots: both are kept, one under a new code that is told", () => {
  const later: Plan = {
    ...before,
    lots: [...before.lots, lot("lot-2", "P-27", { harvestYear: 2027 })],
  };
  const other: Plan = {
    ...next,
    lots: [...next.lots, lot("lot-7", "p-27", { harvestYear: 2025 })],
  };
  expect(lotsFromBefore(other, later).recoded).toEqual([{ from: "P-27", to: "P-27-2" }]);
  const after = taken(other, later);
  expect(after.lots.map(({ code, harvestYear }) => [code, harvestYear])).toEqual([
    ["P-26", 2026],
    ["p-27", 2025],
    ["P-27-2", 2027],
  ]);
  expect(lotsFromBefore(after, later).lots, "a second time").toEqual([]);
});
