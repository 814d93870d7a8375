/**
 * Every piece of advice, applied, is judged again by a fresh run of the checks: the conflict it is
 * for is gone, it brings no new one, and whatever it brings or makes worse it has said.
 */
import { expect, test, vi } from "vitest";
import { isWorse } from "../../src/core/checks/acceptance.ts";
import { checkLayout } from "../../src/core/checks/checked-layout.ts";
import type { Finding } from "../../src/core/checks/all-checks.ts";
import type { IsolationPair } from "../../src/core/checks/isolation-pair.ts";
import { type CheckResult, runChecks } from "../../src/core/checks/run-checks.ts";
import { isolationPair } from "../../src/core/checks/isolation.ts";
import { changedIds, byId } from "../../src/core/model/changed-ids.ts";
import type { Layout, Plan } from "../../src/core/model/plan.ts";
import { candidateWays } from "../../src/core/remedies/candidate-ways.ts";
import { findRemedies } from "../../src/core/remedies/find-remedies.ts";
import { disturbance, inOrderOfWorth } from "../../src/core/remedies/rank-ways.ts";
import { crowdedGarden } from "../support/crowded-garden.ts";
import { book } from "./random-plan.ts";

vi.setConfig({ testTimeout: 120_000 });

const layoutOf = (plan: Plan) => plan.layouts[0] as Layout;

/** The pairs of a finding as a fresh run judges them: never merely unknown. */
function atRiskAfter(finding: Finding, { standById }: CheckResult): readonly IsolationPair[] {
  if (finding.check !== "isolation") return [];
  return finding.atRisk.flatMap(({ seedParent, pollenSource }) => {
    const [parent, source] = [standById.get(seedParent), standById.get(pollenSource)];
    return (parent && source && isolationPair(parent, source, book)) || [];
  });
}

test("applied, each way out clears what it says and brings nothing unsaid", () => {
  const ways = new Map<string, number>();
  let judged = 0;
  for (let seed = 1; seed <= 14; seed += 1) {
    const plan = crowdedGarden(seed);
    const context = checkLayout(plan, layoutOf(plan).id);
    const known = new Map(context.result.findings.map((each) => [each.id, each]));
    const conflicts = context.result.findings.filter(({ check }) => check === "isolation");
    for (const finding of conflicts.slice(0, 4)) {
      for (const remedy of findRemedies(context, finding)) {
        const where = `seed ${seed}, ${finding.id}: ${remedy.title}`;
        const edited = remedy.edit.apply(plan);
        const after = runChecks(edited, layoutOf(edited), book);
        judged += atRiskAfter(finding, after).length;
        for (const pair of atRiskAfter(finding, after)) {
          expect(["distance", "time", "cover"], where).toContain(pair.standing);
        }
        const left = new Set(after.findings.map(({ id }) => id));
        expect(left.has(finding.id), where).toBe(false);
        for (const id of remedy.clears) expect(left.has(id), where).toBe(false);
        const brought = after.findings.filter((each) => {
          const was = known.get(each.id);
          return was === undefined || isWorse(was, each);
        });
        expect(
          brought.filter(({ severity }) => severity === "conflict"),
          where,
        ).toEqual([]);
        expect(brought.map(({ id }) => id).sort(), where).toEqual(
          remedy.brings.map(({ id }) => id).sort(),
        );
        ways.set(remedy.way, (ways.get(remedy.way) ?? 0) + 1);
      }
    }
  }
  expect(judged).toBeGreaterThan(100);
  // Guard rows and smaller blocks, seldom called for, are tried by hand-made gardens.
  const reached = ["move", "other bed", "cover", "cut", "date", "not for seed"];
  for (const way of [...reached, "other year", "ask"]) {
    expect(ways.get(way) ?? 0, way).toBeGreaterThan(0);
  }
});

test("candidates touch only what they say, stay off what is to stay, and cost no less than nothing", () => {
  let seen = 0;
  for (let seed = 76; seed <= 85; seed += 1) {
    const plan = crowdedGarden(seed);
    const context = checkLayout(plan, layoutOf(plan).id);
    const staying = new Set(
      layoutOf(plan)
        .plantings.slice(0, 3)
        .map(({ id }) => id),
    );
    for (const way of candidateWays(context, { mostDays: 30, placesPerBed: 3, staying })) {
      const edited = way.edit.apply(plan);
      const changed = [
        ...changedIds(byId(layoutOf(plan).plantings), byId(layoutOf(edited).plantings)),
        ...changedIds(byId(plan.surroundings), byId(edited.surroundings)),
      ];
      for (const id of changed) expect(way.touches, way.title).toContain(id);
      for (const id of way.touches) expect(staying.has(id), way.title).toBe(false);
      expect(way.cost.days).toBeLessThanOrEqual(30);
      expect(disturbance(way.cost)).toBeGreaterThanOrEqual(0);
      seen += 1;
    }
  }
  expect(seen).toBeGreaterThan(100);
});

test("ranking keeps every way", () => {
  const plan = crowdedGarden(7);
  const context = checkLayout(plan, layoutOf(plan).id);
  const finding = context.result.findings.find(({ check }) => check === "isolation");
  if (!finding) throw new Error("no conflict");
  const remedies = findRemedies(context, finding);
  expect(new Set(inOrderOfWorth([...remedies].reverse()))).toEqual(new Set(remedies));
});
