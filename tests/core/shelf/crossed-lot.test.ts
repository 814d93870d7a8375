/** Seed that may have crossed: what a lot knows of itself, where it shows, and what a plan says of it. */
import { describe, expect, test } from "vitest";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { removeLots } from "../../../src/core/edits/lot-edits.ts";
import { crossedLots } from "../../../src/core/generations/crossed-lots.ts";
import { isolationMet } from "../../../src/core/generations/growing.ts";
import { lotLabels } from "../../../src/core/labels/packet-facts.ts";
import { mayHaveCrossed } from "../../../src/core/lots/lot-book.ts";
import type { Lot, Plan } from "../../../src/core/model/plan.ts";
import { harvestLot } from "../../../src/core/record/harvest-lot.ts";
import * as said from "../../../src/core/words/crossed-lot-words.ts";
import {
  type TrialPlanting,
  day,
  findingsOf,
  layoutOf,
  trialPlan,
  wordsOf,
} from "../../support/trial-plan.ts";

const lot = (id: string, more: Partial<Lot> = {}): Lot => ({
  id,
  code: id.toUpperCase(),
  variety: "v",
  state: "in stock",
  ...more,
});
const NEAR = { id: "q", name: "Q-1 Other", metres: 2, standing: "conflict" } as const;
const record = (more: object) =>
  ({
    judgedOn: 9000,
    level: "home",
    standing: "conflict",
    sources: [{ ...NEAR, relation: "freely", because: "not clear: 2 of 9 m" }],
    notObserved: [],
    ...more,
  }) as Lot["isolation"] & object;

const tomato = (more: Partial<TrialPlanting>): TrialPlanting => ({
  at: 0,
  kind: "tomato",
  variety: { id: "v", name: "One" },
  ...more,
});
const sown = (lots: readonly Lot[], more: Partial<TrialPlanting> = {}): Plan => ({
  ...trialPlan({ a: tomato({ lots: ["x"], ...more }) }),
  lots,
});
const told = (plan: Plan) => findingsOf(plan, "crossed-lot").map(({ subject }) => subject);

describe("what a lot knows", () => {
  test.each([
    ["nothing", {}, false],
    ["a record of a conflict", { isolation: record({}) }, true],
    ["one without its sources", { isolation: record({ sources: [] }) }, true],
    [
      "of species that rarely cross",
      { isolation: record({ sources: [{ ...NEAR, relation: "rarely" }] }) },
      false,
    ],
    ["of what cannot be told", { isolation: record({ standing: "unknown" }) }, false],
    ["said by hand", { mayHaveCrossed: true }, true],
    ["looked through and true", { isolation: record({}), mayHaveCrossed: false }, false],
  ] satisfies [string, Partial<Lot>, boolean][])("%s", (_, more, expected) => {
    expect(mayHaveCrossed(lot("x", more))).toBe(expected);
    expect(crossedLots([lot("x", more)]).has("x")).toBe(expected);
  });

  test("what came of it has it too, until plants were looked through; off the shelf it is remembered", () => {
    const lots = [
      lot("x", { mayHaveCrossed: true }),
      lot("child", { grownFrom: ["x"] }),
      lot("part", { partOf: ["child"] }),
      lot("true", { grownFrom: ["x"], mayHaveCrossed: false }),
      lot("after", { grownFrom: ["true"] }),
    ];
    expect([...crossedLots(lots)]).toEqual([
      ["x", ["X"]],
      ["child", ["X"]],
      ["part", ["X"]],
    ]);
    const plan = removeLots(["x"], "gone").apply(sown(lots, { lots: ["child"] }));
    expect(plan.lots.find(({ id }) => id === "child")?.crossedBefore).toEqual(["X"]);
    expect(crossedLots(plan.lots).get("part")).toEqual(["X"]);
    expect(isolationMet(lot("x", { mayHaveCrossed: true }))).toBe("not met");
  });

  test("a harvest too near another variety has it by its frozen record, one far enough has not", () => {
    const harvest = (at: number) => {
      const plan = trialPlan({
        a: tomato({ isolationM: 5, variety: { id: "v-a", name: "One" } }),
        b: tomato({ at, variety: { id: "v-b", name: "Other" } }),
      });
      const on = day("2027-09-20");
      const made = harvestLot(plan, { layoutId: layoutOf(plan).id, plantingId: "a", on });
      return made && mayHaveCrossed(made);
    };
    expect([harvest(3), harvest(40)]).toEqual([true, false]);
  });
});

describe("what the plan says when it is sown", () => {
  const crossed = lot("x", { isolation: record({}) });

  test("for seed: how near what stood, and which lot to sow instead", () => {
    const lots = [crossed, lot("clean"), lot("used", { state: "used up" }), lot("x2", crossed)];
    const plan = sown(
      lots.map((each, at) => (at === 3 ? { ...each, id: "x2", code: "X2" } : each)),
    );
    const [words] = wordsOf(plan, "crossed-lot");
    expect(told(plan)).toEqual(["a"]);
    expect(words).toContain(
      "Lot X was not kept apart while it grew: Q-1 Other (not clear: 2 of 9 m).",
    );
    expect(words).toContain(said.orSow(["CLEAN"]));
    expect(words).not.toContain("USED");
  });

  test("nothing where it is eaten alone, cut, or found true", () => {
    expect(told(sown([crossed], { purpose: "food" }))).toEqual([]);
    expect(told(sown([crossed], { flowering: "cut" }))).toEqual([]);
    expect(told(sown([{ ...crossed, mayHaveCrossed: false }]))).toEqual([]);
    expect(told(sown([lot("x")]))).toEqual([]);
  });

  test("its forebears are named where it was kept apart itself", () => {
    const plan = sown([lot("old", { mayHaveCrossed: true }), lot("x", { grownFrom: ["old"] })]);
    const [words] = wordsOf(plan, "crossed-lot");
    expect(words).toContain(said.comesFrom("X", ["OLD"]));
    expect(words).not.toContain(said.markedSo("X"));
  });

  test("beside clean seed of its own variety it is told even if it is eaten, and how to part them", () => {
    const plan = (keepApart: boolean): Plan => ({
      ...trialPlan({
        a: tomato({ lots: ["x"], purpose: "food", ...(keepApart ? { keepApart } : {}) }),
        b: tomato({ at: 2, lots: ["clean"] }),
      }),
      lots: [crossed, lot("clean")],
    });
    expect(told(plan(false))).toEqual(["a"]);
    expect(wordsOf(plan(false), "crossed-lot")[0]).toContain("mark A One as keep apart");
    expect(told(plan(true))).toEqual([]);
    expect(findingsOf(plan(true), "isolation")).toHaveLength(1);
  });
});

test("its packet says so, and that of a clean lot does not", () => {
  const plan = sown([lot("x", { mayHaveCrossed: true }), lot("clean")]);
  const warnings = lotLabels(checkLayout(plan, layoutOf(plan).id)).map(({ warning }) => warning);
  expect(warnings).toEqual(["", said.packetWarning]);
});
