import { describe, expect, test } from "vitest";
import {
  addLots,
  changeLots,
  mixLots,
  moveLots,
  nextLotId,
  nextTestId,
  putLots,
  putTest,
  removeLots,
  removeTest,
  splitLot,
} from "../../../src/core/edits/lot-edits.ts";
import { removeVariety } from "../../../src/core/edits/object-edits.ts";
import { sowFrom, sowFromCodes } from "../../../src/core/edits/sown-lots.ts";
import {
  nextPlaceId,
  putStoragePlace,
  removeStoragePlace,
} from "../../../src/core/edits/storage-edits.ts";
import { lotCodesToSow } from "../../../src/core/lots/lot-book.ts";
import type { Lot, Plan } from "../../../src/core/model/plan.ts";
import { readPlan, writePlan } from "../../../src/core/model/read-plan.ts";
import { isKnownKind } from "../../support/small-garden.ts";
import { day, trialPlan } from "../../support/trial-plan.ts";

const lot = (id: string, code: string, more: Partial<Lot> = {}): Lot => ({
  id,
  code,
  variety: "v-a",
  state: "in stock",
  ...more,
});

const BIG = lot("lot-1", "AA-25", {
  harvestYear: 2025,
  amount: { unit: "g", value: 20 },
  stored: [{ place: "place-1" }],
});
const SMALL = lot("lot-2", "AA-24", {
  harvestYear: 2024,
  amount: { unit: "g", value: 5 },
  treated: true,
  treatedWith: "thiram",
});
const OTHER = lot("lot-3", "BB-25", { variety: "v-b" });

const plan: Plan = {
  ...trialPlan({
    a: { at: 0, kind: "beet", lots: ["lot-1", "lot-2"] },
    b: { at: 9, kind: "tomato" },
  }),
  lots: [BIG, SMALL, OTHER],
  storagePlaces: [{ id: "place-1", name: "Tin" }],
};

/** Every edit must leave a plan that a file could hold. */
function isSound(next: Plan): Plan {
  const read = readPlan(writePlan(next), "plan.json", isKnownKind);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return next;
}

function lotOf(next: Plan, id: string): Lot | undefined {
  return isSound(next).lots.find((each) => each.id === id);
}

describe("lots", () => {
  test("are added at the end and put in their own place, others staying the same objects", () => {
    const next = addLots([lot(nextLotId(plan), "CC-26")]).apply(plan);
    expect(next.lots.map(({ id }) => id)).toEqual(["lot-1", "lot-2", "lot-3", "lot-4"]);
    const changed = { ...SMALL, note: "dusty" };
    const put = putLots([changed, lot("lot-9", "DD-1")], "Take 2 lots").apply(plan);
    expect(put.lots).toEqual([BIG, changed, OTHER, lot("lot-9", "DD-1")]);
    expect(put.lots[0]).toBe(BIG);
  });

  test("are changed several at once, and not at all where nothing is theirs", () => {
    const next = changeLots(["lot-1", "lot-3"], { state: "used up" }, "Used up").apply(plan);
    expect(next.lots.map(({ state }) => state)).toEqual(["used up", "in stock", "used up"]);
    expect(changeLots(["lot-8"], { note: "?" }, "Note").apply(plan)).toBe(plan);
  });

  test("removed are no longer named by plantings, varieties and parts of them", () => {
    const named: Plan = {
      ...plan,
      varieties: plan.varieties.map((each) => ({ ...each, lots: ["lot-1"] })),
      lots: [BIG, SMALL, { ...OTHER, partOf: ["lot-1"] }],
    };
    const next = isSound(removeLots(["lot-1"], "Delete a lot").apply(named));
    expect(next.layouts[0]?.plantings.map(({ lots }) => lots)).toEqual([["lot-2"], undefined]);
    expect(next.varieties.some((each) => "lots" in each)).toBe(false);
    expect(next.lots[1]).toEqual(OTHER);
    expect(next.layouts[0]?.plantings[1]).toBe(named.layouts[0]?.plantings[1]);
  });

  test("go with their variety, and whoever was sown from them names them no more", () => {
    const crossed = sowFrom("layout-1", ["b"], ["lot-1", "lot-3"], "Sow b").apply(plan);
    const next = isSound(removeVariety("v-a", "Delete A").apply(crossed));
    expect(next.lots).toEqual([OTHER]);
    expect(next.layouts[0]?.plantings.map(({ id, lots }) => [id, lots])).toEqual([
      ["b", ["lot-3"]],
    ]);
  });

  test("split keep their sum, their facts and their parent", () => {
    const next = splitLot("lot-1", { unit: "g", value: 8 }, "AA-25").apply(plan);
    expect(lotOf(next, "lot-1")?.amount).toEqual({ unit: "g", value: 12 });
    expect(lotOf(next, "lot-4")).toEqual({
      ...BIG,
      id: "lot-4",
      code: "AA-25-2",
      amount: { unit: "g", value: 8 },
      partOf: ["lot-1"],
    });
  });

  test("are not split for more than they hold, in another unit, or without an amount", () => {
    expect(splitLot("lot-1", { unit: "g", value: 20.5 }, "X").apply(plan)).toBe(plan);
    expect(splitLot("lot-1", { unit: "seeds", value: 1 }, "X").apply(plan)).toBe(plan);
    expect(splitLot("lot-3", { unit: "g", value: 1 }, "X").apply(plan)).toBe(plan);
  });

  test("mixed name their parents, use them up, and stay treated when one of them is", () => {
    const next = mixLots(["lot-1", "lot-2"], "AA-MIX").apply(plan);
    expect(lotOf(next, "lot-4")).toEqual({
      id: "lot-4",
      code: "AA-MIX",
      variety: "v-a",
      state: "in stock",
      partOf: ["lot-1", "lot-2"],
      amount: { unit: "g", value: 25 },
      treated: true,
      treatedWith: "thiram",
    });
    expect(next.lots.slice(0, 2).map(({ state, amount }) => [state, amount?.value])).toEqual([
      ["used up", 0],
      ["used up", 0],
    ]);
  });

  test("of two varieties are never mixed", () => {
    expect(mixLots(["lot-1", "lot-3"], "X").apply(plan)).toBe(plan);
    expect(mixLots(["lot-1", "lot-1"], "X").apply(plan)).toBe(plan);
  });
});

describe("where lots lie and how they were tested", () => {
  test("a move adds a stay; the same day again replaces it; no day replaces all", () => {
    const from = day("2026-11-01");
    const moved = moveLots(["lot-1"], "place-1", from, "Move").apply(plan);
    expect(lotOf(moved, "lot-1")?.stored).toEqual([
      { place: "place-1" },
      { place: "place-1", from },
    ]);
    const again = moveLots(["lot-1"], "place-1", from, "Move").apply(moved);
    expect(again.lots[0]?.stored).toEqual(moved.lots[0]?.stored);
    const always = moveLots(["lot-1"], "place-1", undefined, "Move").apply(moved);
    expect(always.lots[0]?.stored).toEqual([{ place: "place-1" }]);
  });

  test("tests stand in order of their days and are replaced by id", () => {
    const late = { id: nextTestId(BIG), date: day("2026-03-01"), sown: 50, sprouted: 40 };
    const early = { id: "t2", date: day("2026-01-01"), sown: 20, sprouted: 18 };
    const one = putTest("lot-1", late, "Test").apply(plan);
    const both = putTest("lot-1", early, "Test").apply(one);
    expect(lotOf(both, "lot-1")?.tests?.map(({ id }) => id)).toEqual(["t2", "t1"]);
    const fixed = putTest("lot-1", { ...late, sprouted: 41 }, "Test").apply(both);
    expect(fixed.lots[0]?.tests?.map(({ sprouted }) => sprouted)).toEqual([18, 41]);
    const gone = removeTest("lot-1", "t1", "Delete").apply(
      removeTest("lot-1", "t2", "Delete").apply(fixed),
    );
    expect(gone.lots[0]).toEqual(BIG);
  });

  test("a place is added, changed, and removed with the stays there", () => {
    const cellar = { id: nextPlaceId(plan), name: "Cellar" };
    const next = putStoragePlace(cellar).apply(plan);
    expect(next.storagePlaces.map(({ id }) => id)).toEqual(["place-1", "place-2"]);
    const named = putStoragePlace({ ...cellar, name: "Deep cellar" }).apply(next);
    expect(named.storagePlaces[1]?.name).toBe("Deep cellar");
    const removal = removeStoragePlace({ id: "place-1", name: "Tin" });
    expect(removal.note?.(plan)).toBe(
      "one lot was stored there; its time there is no longer known",
    );
    expect(lotOf(removal.apply(plan), "lot-1")).not.toHaveProperty("stored");
  });
});

describe("what a planting is sown from", () => {
  test("typed codes find lots in any case; unknown ones become lots of its variety", () => {
    const next = isSound(
      sowFromCodes("layout-1", "b", " bb-25; NEW-1", "Set lot of B").apply(plan),
    );
    const planting = next.layouts[0]?.plantings[1];
    expect(planting?.lots).toEqual(["lot-3", "lot-4"]);
    expect(lotOf(next, "lot-4")).toEqual(lot("lot-4", "NEW-1", { variety: "v-b" }));
    expect(lotCodesToSow(next, planting ?? {}, undefined)).toBe("BB-25, NEW-1");
    const emptied = sowFromCodes("layout-1", "b", "", "Set lot of B").apply(next);
    expect(emptied.layouts[0]?.plantings[1]).not.toHaveProperty("lots");
  });
});
