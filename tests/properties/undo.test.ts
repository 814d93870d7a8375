/** Patches kept for undo give back exactly what was there. */
import * as fc from "fast-check";
import { expect, test, vi } from "vitest";
import { applyPatch, difference } from "../../src/core/edits/patch.ts";
import type { Layout, Plan } from "../../src/core/model/plan.ts";
import { arbitraryPlan } from "./arbitrary-plan.ts";
import { randomEdit, randomPlan } from "./random-plan.ts";
import { seededRandom } from "./seeded-random.ts";

vi.setConfig({ testTimeout: 60_000 });

test("between any two plans a patch leads forward and back", () => {
  fc.assert(
    fc.property(arbitraryPlan, arbitraryPlan, (before, after) => {
      const patch = difference(before, after);
      if (patch === null) {
        expect(after).toEqual(before);
        return;
      }
      expect(applyPatch(before, patch, "forward")).toEqual(after);
      expect(applyPatch(after, patch, "back")).toEqual(before);
    }),
    { numRuns: 200 },
  );
});

test("a hundred edits are undone and redone one by one, and no edit changes a plan in place", () => {
  for (let seed = 1; seed <= 10; seed += 1) {
    const random = seededRandom(seed);
    const plans: Plan[] = [randomPlan(random, 60)];
    const texts: string[] = [JSON.stringify(plans[0])];
    for (let step = 0; step < 100; step += 1) {
      const plan = plans.at(-1) as Plan;
      if ((plan.layouts[0] as Layout).plantings.length === 0) break;
      const next = randomEdit(random, plan, []).apply(plan);
      plans.push(next);
      texts.push(JSON.stringify(next));
    }
    expect(plans.map((plan) => JSON.stringify(plan))).toEqual(texts);
    const patches = plans.slice(1).map((plan, index) => difference(plans[index], plan));
    let current = plans.at(-1) as Plan;
    patches.toReversed().forEach((patch, back) => {
      if (patch) current = applyPatch(current, patch, "back");
      expect(current).toEqual(plans[plans.length - 2 - back]);
    });
    patches.forEach((patch, index) => {
      if (patch) current = applyPatch(current, patch, "forward");
      expect(current).toEqual(plans[index + 1]);
    });
  }
});

test("undoing leaves what the edit did not touch the same objects", () => {
  const random = seededRandom(3);
  const plan = randomPlan(random, 30);
  const layout = plan.layouts[0] as Layout;
  const changed: Plan = {
    ...plan,
    layouts: [
      {
        ...layout,
        plantings: layout.plantings.map((planting, index) =>
          index === 7 ? { ...planting, code: "X" } : planting,
        ),
      },
    ],
  };
  const patch = difference(plan, changed);
  if (!patch) throw new Error("no difference");
  const back = applyPatch(changed, patch, "back");
  expect(back).toEqual(plan);
  expect(back.varieties).toBe(plan.varieties);
  back.layouts[0]?.plantings.forEach((planting, index) => {
    if (index !== 7) expect(planting).toBe(layout.plantings[index]);
  });
  expect(JSON.stringify(patch).length).toBeLessThan(250);
});
