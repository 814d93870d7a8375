/** Carrying findings forward must give what a fresh run gives, after any edits. */
import { expect, test, vi } from "vitest";
import { allIsolationPairs } from "../../src/core/checks/isolation.ts";
import { countBySeverity } from "../../src/core/checks/finding.ts";
import { type CheckResult, runChecks } from "../../src/core/checks/run-checks.ts";
import type { Layout, Plan } from "../../src/core/model/plan.ts";
import { book, randomEdit, randomPlan } from "./random-plan.ts";
import { seededRandom } from "./seeded-random.ts";

vi.setConfig({ testTimeout: 120_000 });

function run(plan: Plan, previous?: CheckResult): CheckResult {
  return runChecks(plan, plan.layouts[0] as Layout, book, previous);
}

/** What of a result the rest of the program reads. */
function told({ findings, accepted, pairs, counts }: CheckResult) {
  return { findings, accepted, pairs, counts };
}

test("after random edits a carried-forward run equals a fresh one", () => {
  let [seen, accepted] = [0, 0];
  for (let seed = 1; seed <= 40; seed += 1) {
    const random = seededRandom(seed);
    let plan = randomPlan(random, random.pick([5, 25, 70]));
    let result = run(plan);
    for (let step = 1; step <= 40; step += 1) {
      const edit = randomEdit(
        random,
        plan,
        result.findings.map(({ id }) => id),
      );
      plan = edit.apply(plan);
      if ((plan.layouts[0] as Layout).plantings.length === 0) break;
      result = run(plan, result);
      const fresh = run(plan);
      if (JSON.stringify(told(result)) !== JSON.stringify(told(fresh))) {
        expect(told(result), `seed ${seed}, step ${step}: ${edit.title}`).toEqual(told(fresh));
      }
      expect(fresh.counts).toEqual(countBySeverity(fresh.findings));
      expect([...result.byCheck.keys()]).toEqual([...fresh.byCheck.keys()]);
      // Counted without the list; some are accepted, and not in it.
      expect(result.counts).toEqual(countBySeverity(result.findings));
      accepted += result.accepted.length;
      seen += fresh.findings.length;
    }
  }
  expect(seen).toBeGreaterThan(10_000);
  expect(accepted).toBeGreaterThan(100);
});

test("a preview thrown away leaves nothing behind", () => {
  const random = seededRandom(99);
  const plan = randomPlan(random, 40);
  const resting = run(plan);
  for (let step = 0; step < 60; step += 1) {
    // As while dragging: every frame edits the committed plan and carries on from the last frame.
    const preview = randomEdit(random, plan, []).apply(plan);
    const shown = run(preview, step % 2 === 0 ? resting : run(plan, resting));
    expect(told(shown)).toEqual(told(run(preview)));
    expect(told(run(plan, shown))).toEqual(told(resting));
  }
});

test("whatever run it is carried on from, older ones and other branches stay what they were", () => {
  let compared = 0;
  for (let seed = 1; seed <= 12; seed += 1) {
    const random = seededRandom(1000 + seed);
    const first = randomPlan(random, random.pick([12, 40]));
    const made = [{ plan: first, result: run(first) }];
    for (let step = 0; step < 30; step += 1) {
      // On from any state so far, or back to the plan of one with what another left behind: undo.
      const { plan, result } = random.pick(made);
      const next = random.chance(0.25)
        ? random.pick(made).plan
        : randomEdit(random, plan, []).apply(plan);
      if ((next.layouts[0] as Layout).plantings.length === 0) continue;
      made.push({ plan: next, result: run(next, result) });
    }
    // Read only now: what the later runs did must not show in the earlier ones.
    for (const { plan, result } of made) {
      const fresh = run(plan);
      expect(told(result)).toEqual(told(fresh));
      expect(result.stands.map(({ id }) => id)).toEqual(fresh.stands.map(({ id }) => id));
      expect(new Map(result.standById).size).toBe(fresh.standById.size);
      for (const stand of result.stands) expect(result.standById.get(stand.id)).toBe(stand);
      expect([...result.bedOutlines]).toEqual([...fresh.bedOutlines]);
      expect(new Map(result.pairsByParent)).toEqual(new Map(fresh.pairsByParent));
      compared += 1;
    }
  }
  expect(compared).toBeGreaterThan(200);
});

test("among 300 stands the pairs are those of measuring every one against every other", () => {
  for (let seed = 1; seed <= 6; seed += 1) {
    const plan = randomPlan(seededRandom(seed), 300, seed % 2 === 0 ? 60 : 300);
    const { pairs, stands } = run(plan);
    const all = allIsolationPairs(stands, book);
    expect(pairs).toEqual(all.filter(({ standing }) => standing !== "distance"));
    expect(all.some(({ standing }) => standing === "distance")).toBe(true);
    expect(new Set(pairs.map(({ standing }) => standing)).size).toBeGreaterThan(2);
  }
});
