/** Lots that go along when plantings are copied from one plan to another. */
import { expect, test } from "vitest";
import { clipText, pasteObjects, readClip } from "../../../src/core/edits/clipboard.ts";
import type { Lot, Plan } from "../../../src/core/model/plan.ts";
import { readPlan, writePlan } from "../../../src/core/model/read-plan.ts";
import { book, day, layoutOf, trialPlan } from "../../support/trial-plan.ts";

const isKnown = (kind: string) => book.kind(kind) !== undefined;
const lot = (id: string, code: string, more: Partial<Lot> = {}): Lot => ({
  id,
  code,
  variety: "v-a",
  state: "in stock",
  ...more,
});

const tests = [{ id: "t1", date: day("2027-01-10"), sown: 50, sprouted: 44 }];
const from: Plan = {
  ...trialPlan({ a: { at: 0, kind: "tomato", lots: ["lot-7"], variety: { name: "Old Ferry" } } }),
  id: "from",
  storagePlaces: [{ id: "box", name: "Box" }],
  lots: [
    lot("lot-7", "OF-24", { tests, amount: { unit: "g", value: 9 }, stored: [{ place: "box" }] }),
    lot("lot-8", "OF-25"),
  ],
};

function pasted(into: Plan): Plan {
  const copied = readClip(clipText(from, layoutOf(from), ["a"]) ?? "", isKnown);
  if (!copied.ok) throw new Error(copied.reason);
  const next = pasteObjects(layoutOf(into).id, copied.clip, { x: 50, y: 0 }, "Paste").apply(into);
  const read = readPlan(writePlan(next), "pasted", isKnown);
  expect(read.ok ? [] : read.problems).toEqual([]);
  return next;
}
const lotsOfLast = (plan: Plan) =>
  (layoutOf(plan).plantings.at(-1)?.lots ?? []).map((id) =>
    plan.lots.find((each) => each.id === id),
  );

test("the lot comes with its tests, without the amount and place it has elsewhere", () => {
  const next = pasted({ ...trialPlan({ b: { at: 0, kind: "pea" } }), id: "into" });
  expect(next.lots).toHaveLength(1);
  const [sown] = lotsOfLast(next);
  expect([sown?.code, sown?.tests, sown?.amount, sown?.stored]).toEqual([
    "OF-24",
    tests,
    undefined,
    undefined,
  ]);
  expect(next.varieties.find(({ id }) => id === sown?.variety)?.name).toBe("Old Ferry");
});

test("a lot of that code and variety is taken for it, and stays as it is", () => {
  const own = lot("lot-1", "of-24", { amount: { unit: "seeds", value: 3 } });
  const into: Plan = {
    ...trialPlan({ a: { at: 0, kind: "tomato", variety: { name: "Old Ferry" } } }),
    id: "into",
    lots: [own],
  };
  const next = pasted(into);
  expect(next.lots).toEqual([own]);
  expect(lotsOfLast(next)).toEqual([own]);
});

test("a code that another variety has here gets a number, never that variety's seed", () => {
  const own = lot("lot-1", "OF-24", { variety: "v-b" });
  const into: Plan = { ...trialPlan({ b: { at: 0, kind: "pea" } }), id: "into", lots: [own] };
  const [sown] = lotsOfLast(pasted(into));
  expect([sown?.code, sown?.variety === "v-b"]).toEqual(["OF-24-2", false]);
});

test("within one plan nothing is doubled", () => {
  const next = pasted(from);
  expect(next.lots).toEqual(from.lots);
  expect(lotsOfLast(next).map((each) => each?.id)).toEqual(["lot-7"]);
});
