/** What a run carried forward looks at, counted: what a move touches, however large the plan. */
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { describe, expect, test, vi } from "vitest";
import {
  type CarriedRun,
  carriedRun,
  changeInput,
  keptOf,
} from "../../../src/core/checks/carried-run.ts";
import { type CheckResult, runChecks } from "../../../src/core/checks/run-checks.ts";
import { changePlantings } from "../../../src/core/edits/object-edits.ts";
import { moveObjects } from "../../../src/core/edits/move-objects.ts";
import type { Layout, Plan } from "../../../src/core/model/plan.ts";
import { book, fieldPlan } from "../../bench/field.ts";

const run = (plan: Plan, previous?: CheckResult) =>
  runChecks(plan, plan.layouts[0] as Layout, book, previous);

function carried(plan: Plan, from: CheckResult): CarriedRun {
  const made = carriedRun({ ...from.of, plan, layout: plan.layouts[0] as Layout }, from);
  if (!made) throw new Error("the longer way was taken");
  return made;
}

/** A move of one planting in a field of so many, each with about eight neighbours in reach. */
function moveIn(count: number) {
  const plan = fieldPlan(count, 1);
  const before = run(plan);
  const moved = moveObjects("layout-1", ["p7"], 0.5, 0).apply(plan);
  const made = carried(moved, before);
  return { before, moved, run: made, input: inputOf(moved, made, before) };
}

/** What the checks are told of it. */
function inputOf(plan: Plan, { kept, changed }: CarriedRun, before: CheckResult) {
  const of = { ...before.of, plan, layout: plan.layouts[0] as Layout };
  return changeInput(of, kept, keptOf(before), changed);
}

describe("a planting moved", () => {
  test.each([300, 3000])("touches its neighbours alone among %d", (count) => {
    const { gonePairs, freshPairs, changes } = moveIn(count).input;
    expect(changes).toHaveLength(1);
    // Two directions with each of about eight neighbours, whatever the field holds.
    expect(freshPairs.length).toBeGreaterThan(4);
    expect(freshPairs.length).toBeLessThan(60);
    expect(gonePairs.length).toBeLessThan(60);
  });

  test("leaves all else the same objects", () => {
    const { before, moved, run: made } = moveIn(1000);
    const others = made.stands.all.filter((stand, place) => stand !== before.stands[place]);
    expect(others.map(({ id }) => id)).toEqual(["p7"]);
    const lists = [...made.pairsByParent].filter(
      ([id, list]) => list !== before.pairsByParent.get(id),
    );
    expect(lists.length).toBeLessThan(60);
    const after = run(moved, before);
    for (const check of ["population", "safety", "late-seed", "short-of-seed", "two-forms"]) {
      expect(after.byCheck.get(check)).toBe(before.byCheck.get(check));
    }
  });

  test("makes no list of all that nobody reads", () => {
    const { before, moved } = moveIn(1000);
    const unread = () => {
      throw new Error("the list was made");
    };
    const guarded = (result: CheckResult): CheckResult =>
      Object.create(result, {
        stands: { get: unread },
        pairs: { get: unread },
        findings: { get: unread },
      }) as CheckResult;
    const first = run(moved, before);
    const again = moveObjects("layout-1", ["p9"], 0.5, 0).apply(moved);
    const carriedOn = run(again, guarded(first));
    expect(carriedOn.findings).toEqual(run(again).findings);
  });

  test("is no move where its days change as well", () => {
    const plan = fieldPlan(300, 1);
    const before = run(plan);
    const cut = changePlantings("layout-1", ["p7"], { flowering: "cut" }, "Cut").apply(plan);
    expect(inputOf(cut, carried(cut, before), before).isMove).toBe(false);
    expect(moveIn(300).input.isMove).toBe(true);
  });
});

describe("the longer way is taken", () => {
  const plan = fieldPlan(300, 1);
  const before = run(plan);
  const layout = plan.layouts[0] as Layout;
  const other = (next: Plan) =>
    carriedRun({ ...before.of, plan: next, layout: next.layouts[0] as Layout }, before);
  const withPlantings = (plantings: Layout["plantings"]): Plan => ({
    ...plan,
    layouts: [{ ...layout, plantings }],
  });

  test.each<[string, Plan]>([
    ["a planting came or went", withPlantings(layout.plantings.slice(1))],
    ["two change places in the list", withPlantings(layout.plantings.toReversed())],
    ["anything else of the plan differs", { ...plan, level: "stock" }],
    [
      "more than a quarter changed",
      moveObjects(
        "layout-1",
        layout.plantings.slice(0, 100).map(({ id }) => id),
        1,
        0,
      ).apply(plan),
    ],
  ])("where %s", (_, next) => {
    expect(other(next)).toBeNull();
  });

  test("where a part of the checks was joined in between", () => {
    expect(carriedRun({ ...before.of, joined: "another" }, before)).toBeNull();
    expect(carriedRun(before.of, before)).not.toBeNull();
  });
});

test("a result holds on to none of those it was carried on from", async () => {
  setFlagsFromString("--expose-gc");
  const collect = runInNewContext("gc") as () => void;
  const plan = fieldPlan(300, 1);
  let last = run(plan);
  const earlier: WeakRef<CheckResult>[] = [];
  for (let step = 1; step <= 20; step += 1) {
    earlier.push(new WeakRef(last));
    last = run(moveObjects("layout-1", ["p7"], step, 0).apply(plan), last);
    // Read as the window reads it, or not.
    if (step % 2 === 0) expect(last.pairs.length + last.findings.length).toBeGreaterThan(0);
  }
  await vi.waitFor(() => {
    collect();
    // The last but one may still stand on the stack of this test.
    const held = earlier.filter((each) => each.deref() !== undefined);
    expect(held.length).toBeLessThanOrEqual(1);
  });
  expect(last.stands).toHaveLength(300);
});
