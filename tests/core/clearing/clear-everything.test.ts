/**
 * All conflicts cleared together: what is told is what the checks find once it is applied, step by
 * step and as a whole, and never a new conflict, an unknown or an overlap.
 */
import { describe, expect, test } from "vitest";
import type { CheckedLayout } from "../../../src/core/checks/checked-layout.ts";
import { type Clearing, clearEverything } from "../../../src/core/clearing/clear-everything.ts";
import {
  type Allowances,
  CONFLICT_COST,
  clearingProblem,
} from "../../../src/core/clearing/clearing-problem.ts";
import { isHarm } from "../../../src/core/clearing/clearing-steps.ts";
import {
  outcomeWords,
  proofWords,
  unknownWords,
} from "../../../src/core/clearing/clearing-words.ts";
import { costOf } from "../../../src/core/clearing/choice-proof.ts";
import type { ChoiceProblem } from "../../../src/core/clearing/choice-search.ts";
import { makeChanges } from "../../../src/core/clearing/object-change.ts";
import { broughtFindings } from "../../../src/core/remedies/remedy.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import {
  bed,
  checkedLayout,
  day,
  gardenPlan,
  planting,
  square,
  variety,
} from "../../support/arrange-garden.ts";
import { crowdedGarden } from "../../support/crowded-garden.ts";

function allowing(plan: Plan, more: Partial<Allowances> = {}): Allowances {
  return {
    mostCages: Infinity,
    mostDays: 42,
    staying: new Set(),
    mayWait: new Set(plan.varieties.map(({ id }) => id)),
    ...more,
  };
}

function clearedOf(checked: CheckedLayout, allowances = allowing(checked.plan)): Clearing {
  const run = clearEverything(checked, allowances, null);
  let next = run.next();
  while (next.done !== true) next = run.next();
  return next.value;
}

const conflictIds = ({ result }: CheckedLayout) =>
  result.findings.filter(({ severity }) => severity === "conflict").map(({ id }) => id);

describe("25 crowded gardens", () => {
  let steps = 0;
  let cleared = 0;
  test.each(Array.from({ length: 25 }, (_, index) => index + 1))("garden %i", (seed) => {
    const checked = checkedLayout(crowdedGarden(seed));
    const found = clearedOf(checked);
    let now = checked;
    for (const step of found.steps) {
      const { plan } = now;
      const after = checkedLayout(makeChanges("layout-1", [step.change], "").apply(plan));
      // Each step in its turn, judged afresh.
      expect(broughtFindings(now.result, after.result).filter(isHarm)).toEqual([]);
      const gone = conflictIds(now).filter((id) => !conflictIds(after).includes(id));
      expect(gone.sort()).toEqual([...step.clears].sort());
      now = after;
      steps += 1;
    }
    const changes = found.steps.map(({ change }) => change);
    const whole = checkedLayout(makeChanges("layout-1", changes, "").apply(checked.plan));
    expect(whole.plan).toEqual(now.plan);
    expect(found.before).toBe(conflictIds(checked).length);
    expect(found.left.map(({ id }) => id)).toEqual(conflictIds(whole));
    expect(conflictIds(whole).every((id) => conflictIds(checked).includes(id))).toBe(true);
    expect(found.brings.map(({ id }) => id)).toEqual(
      broughtFindings(checked.result, whole.result).map(({ id }) => id),
    );
    cleared += found.before - found.left.length;
  });
  test("that was many steps and conflicts", () => {
    expect(steps).toBeGreaterThan(40);
    expect(cleared).toBeGreaterThan(60);
  });
});

test("small ones cost what counting all sets of ways through finds", () => {
  let counted = 0;
  for (let seed = 1; seed <= 30; seed += 1) {
    const checked = checkedLayout(crowdedGarden(seed));
    const allowances = allowing(checked.plan, { mostDays: 14 });
    const { problem } = clearingProblem(checked, allowances);
    const sets = problem.pieces.reduce((product, { length }) => product * length, 1);
    const found = clearedOf(checked, allowances);
    if (sets > 200_000 || sets < 2 || !found.isProven) continue;
    expect([seed, found.cost]).toEqual([seed, countedThrough(problem)]);
    counted += 1;
  }
  expect(counted).toBeGreaterThan(6);
}, 120_000);

function countedThrough(problem: ChoiceProblem): number {
  let best = Infinity;
  const descend = (taken: readonly number[]): void => {
    const list = problem.pieces[taken.length];
    if (!list) best = Math.min(best, costOf(problem, taken));
    else for (const index of list.keys()) descend([...taken, index]);
  };
  descend([]);
  return best;
}

describe("within what is allowed", () => {
  const beds = [bed("b1", 0, 0, 1.2, 9), bed("b2", 3, 0, 1.2, 9)];
  const squash = (id: string, x: number, more = {}) =>
    planting(id, id, {
      outline: square(x, 0, 1.2),
      bed: x === 0 ? "b1" : "b2",
      ...more,
    });
  const plan = gardenPlan([variety("p1", "carrot"), variety("p2", "carrot")], beds, [
    squash("p1", 0),
    squash("p2", 3),
  ]);
  const waysOf = (found: Clearing) =>
    found.steps.flatMap(({ changes }) => changes.map(({ way }) => way));

  test("no cage where none is allowed", () => {
    const checked = checkedLayout(plan);
    const found = clearedOf(checked, allowing(plan, { mostCages: 0 }));
    const titles = found.steps.flatMap(({ changes }) => changes.map(({ title }) => title));
    expect(titles.filter((title) => title.startsWith("Cage"))).toEqual([]);
    expect(found.left).toEqual([]);
  });

  test("who must be grown does not wait, and gives its seed", () => {
    const found = clearedOf(checkedLayout(plan), allowing(plan, { mayWait: new Set() }));
    for (const way of ["other year", "not for seed"]) expect(waysOf(found)).not.toContain(way);
  });

  test("what stays is not touched", () => {
    const found = clearedOf(checkedLayout(plan), allowing(plan, { staying: new Set(["p1"]) }));
    expect(found.steps.length).toBeGreaterThan(0);
    for (const { change } of found.steps) {
      expect([...change.plantings.map(({ id }) => id), ...change.gone]).not.toContain("p1");
    }
  });

  test("where both must stay nothing is done, and what is left is named", () => {
    const found = clearedOf(
      checkedLayout(plan),
      allowing(plan, { staying: new Set(["p1", "p2"]) }),
    );
    expect(found.steps).toEqual([]);
    expect(found.left.map(({ check }) => check)).toEqual(["isolation"]);
    expect(outcomeWords(found)).toBe("1 conflict: no change that is allowed clears any of them.");
    expect(found.cost).toBe(CONFLICT_COST);
  });

  test("of locked ones that neither may be covered nor wait, what is left is named", () => {
    const locked = gardenPlan([variety("p1", "spinach"), variety("p2", "spinach")], beds, [
      squash("p1", 0, { locked: true }),
      squash("p2", 3, { locked: true }),
    ]);
    const found = clearedOf(checkedLayout(locked), allowing(locked, { mayWait: new Set() }));
    const moved = found.steps.flatMap(({ change }) => change.plantings);
    for (const { id, outline } of moved) {
      expect(outline).toEqual(locked.layouts[0]?.plantings.find((each) => each.id === id)?.outline);
    }
    expect(found.left.length).toBe(found.steps.length === 0 ? 1 : 0);
  });

  test("a neighbour who has not said yes clears nothing", () => {
    const near = gardenPlan([variety("p1", "beet")], beds, [squash("p1", 0)], {
      surroundings: [
        {
          id: "s1",
          label: "Next door",
          what: "pollen",
          kind: "chard",
          outline: { shape: "point", x: 6, y: 0 },
          flowering: "yes",
          cover: "none",
          bloom: { first: day("2027-07-01"), last: day("2027-08-31") },
        },
      ],
    });
    const found = clearedOf(checkedLayout(near));
    expect(waysOf(found)).not.toContain("ask");
    for (const { change } of found.steps) expect(change.surroundings).toEqual([]);
  });
});

test("without a conflict there is nothing to do", () => {
  const found = clearedOf(checkedLayout(gardenPlan([], [], [])));
  expect([found.steps, outcomeWords(found), proofWords(found)]).toEqual([
    [],
    "There is no conflict to clear.",
    "",
  ]);
});

test("without dates there is no conflict to clear, and nothing is called clear", () => {
  const undated = (id: string, x: number) => {
    const { bloom: _none, ...rest } = planting(id, id, { outline: square(x, 0, 1.2) });
    return rest;
  };
  const plan = gardenPlan(
    [variety("p1", "carrot"), variety("p2", "carrot")],
    [bed("b1", 0, 0, 9, 9)],
    [undated("p1", 0), undated("p2", 3)],
  );
  const found = clearedOf(checkedLayout(plan));
  expect([found.steps.length, found.before]).toEqual([0, 0]);
  expect(found.unknowns).toBeGreaterThan(0);
  expect(unknownWords(found)).toContain("none of that is called clear");
});

test("a proof says over what it was made, a search that it is none", () => {
  const found = clearedOf(checkedLayout(crowdedGarden(2)));
  expect(proofWords({ ...found, isProven: true })).toContain("Proven: among the");
  expect(proofWords({ ...found, isProven: false, atLeast: 2.5 * CONFLICT_COST })).toMatch(
    /not proven.*at least 2 conflicts would be left/,
  );
});
