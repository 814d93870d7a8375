/** A harvest made into a lot, and grams that were cleaned later. */
import { expect, test } from "vitest";
import { packetLabels } from "../../../src/core/labels/packet-facts.ts";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { lotInPlanFaults } from "../../../src/core/lots/lot-in-plan.ts";
import { removeLots } from "../../../src/core/edits/lot-edits.ts";
import {
  gramsToTake,
  harvestLot,
  keepHarvest,
  takeGrams,
} from "../../../src/core/record/harvest-lot.ts";
import type { Entry, Lot, Plan } from "../../../src/core/model/plan.ts";
import { bloom, day, trialPlan } from "../../support/trial-plan.ts";

const entry = (id: string, on: string, what: Entry["what"], more: Partial<Entry> = {}): Entry => ({
  id,
  of: "p",
  on: day(`2027-${on}`),
  what,
  ...more,
});

const garden = (entries: readonly Entry[]): Plan => ({
  ...trialPlan(
    {
      p: {
        at: 0,
        kind: "common-bean",
        bloom: bloom("06-10", "06-30"),
        plants: 40,
        code: "A01-1",
        lots: ["old"],
      },
      q: { at: 9, kind: "common-bean" },
    },
    [],
    { entries },
  ),
  lots: [{ id: "old", code: "OLD-25", variety: "v-p", state: "in stock" }],
});

const HARVEST = { layoutId: "layout-1", plantingId: "p", on: day("2027-10-01") };
const record = [
  entry("1", "06-02", "rogued", { count: 8 }),
  entry("2", "09-10", "harvested", { count: 30 }),
  entry("3", "09-20", "cleaned", { grams: 420 }),
];

test("one press makes the lot: code, year, plot, plants, grams, parent, isolation", () => {
  const plan = garden(record);
  const lot = harvestLot(plan, HARVEST) as Lot;
  expect(lot).toMatchObject({
    code: "VP-27-01",
    variety: "v-p",
    harvestYear: 2027,
    from: {
      what: "own",
      plot: "A01-1",
      season: plan.season.name,
      planting: "p",
      plants: 30,
      cleanedGrams: 420,
    },
    amount: { unit: "g", value: 420 },
    grownFrom: ["old"],
  });
  expect(lot.isolation?.sources.map(({ id }) => id)).toContain("q");
  expect(lot.isolation?.judgedOn, "what flowers after the harvest crosses nothing of it").toBe(
    day("2027-09-10"),
  );
  expect(lotInPlanFaults(plan, lot)).toEqual([]);
});

test("plants that were not counted at harvest are those standing", () => {
  const lot = harvestLot(garden(record.slice(0, 1)), HARVEST);
  expect(lot?.from?.plants).toBe(32);
  expect(lot?.amount).toBeUndefined();
});

test("grams cleaned later go to the lot, none twice, and after a fresh code", () => {
  const plan = garden(record);
  const first = harvestLot(plan, HARVEST) as Lot;
  const kept = keepHarvest(first).apply(plan);
  expect(gramsToTake(kept, "p", "layout-1", HARVEST.on)).toBe(0);
  const later = {
    ...kept,
    entries: [...kept.entries, entry("4", "09-28", "cleaned", { grams: 60.5 })],
  };
  const more = gramsToTake(later, "p", "layout-1", HARVEST.on);
  expect(more).toBe(60.5);
  const taken = takeGrams(first, more).apply(later);
  expect(taken.lots.at(-1)).toMatchObject({
    amount: { unit: "g", value: 480.5 },
    from: { cleanedGrams: 480.5, plants: 30 },
  });
  expect(gramsToTake(taken, "p", "layout-1", HARVEST.on)).toBe(0);
  const second = harvestLot(taken, HARVEST) as Lot;
  expect(second.code).toBe("VP-27-02");
  expect(second.amount).toBeUndefined();
});

test("the packet is that lot's, by the planting it names even after the plot has another code", () => {
  const plan = garden(record);
  const kept = keepHarvest(harvestLot(plan, HARVEST) as Lot).apply(plan);
  const moved: Plan = {
    ...kept,
    layouts: kept.layouts.map((layout) => ({
      ...layout,
      plantings: layout.plantings.map((each) =>
        each.id === "p" ? { ...each, code: "Z09-9" } : each,
      ),
    })),
  };
  const label = packetLabels(checkLayout(moved, "layout-1"), "").find(
    ({ head }) => head === "Variety p",
  );
  const lines = label?.lines.join("\n") ?? "";
  expect(lines).toContain("Lot VP-27-01");
  expect(lines, "the plants harvested, not those planned").toContain("Saved from 30 plants");
  expect(lines, "as it was frozen, not as planned").toContain("Isolation as grown: ");
});

test("a parent that is taken off the shelf is named no more", () => {
  const plan = garden(record);
  const kept = keepHarvest(harvestLot(plan, HARVEST) as Lot).apply(plan);
  const [left] = removeLots(["old"], "Remove").apply(kept).lots;
  expect(left?.grownFrom).toBeUndefined();
  expect(left?.isolation).toEqual(kept.lots.at(-1)?.isolation);
});

test("plants that shed pollen are those set out and still standing, where they were counted", () => {
  const counted = [entry("0", "05-01", "set out", { count: 36 }), ...record];
  expect(harvestLot(garden(counted), HARVEST)?.from).toMatchObject({
    plants: 28,
    pollenPlants: 28,
  });
  expect(harvestLot(garden(record), HARVEST)?.from?.pollenPlants).toBeUndefined();
  const byHand = [...counted, entry("4", "06-09", "covered", { cover: "hand" })];
  expect(harvestLot(garden(byHand), HARVEST)?.from?.pollenPlants).toBeUndefined();
});
