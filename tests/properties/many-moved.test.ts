/** Many moved at once, as a bed with all its plantings: carrying on must give what a fresh run gives. */
import { readFileSync } from "node:fs";
import { expect, test, vi } from "vitest";
import { type CheckResult, runChecks } from "../../src/core/checks/run-checks.ts";
import type { Edit } from "../../src/core/edits/edit.ts";
import { moveObjects, turnObjects } from "../../src/core/edits/move-objects.ts";
import { changePlantings } from "../../src/core/edits/object-edits.ts";
import { moveShape } from "../../src/core/geometry/outline.ts";
import { readPlan } from "../../src/core/model/read-plan.ts";
import type { Layout, Plan } from "../../src/core/model/plan.ts";
import { asGrown } from "../../src/core/record/as-grown.ts";
import { book, randomPlan } from "./random-plan.ts";
import { type SeededRandom, seededRandom } from "./seeded-random.ts";

vi.setConfig({ testTimeout: 60_000 });

const layoutOf = (plan: Plan) => plan.layouts[0] as Layout;
const run = (plan: Plan, previous?: CheckResult) => runChecks(plan, layoutOf(plan), book, previous);

/** What of a result the rest of the program reads. */
function told({ findings, accepted, pairs, pairsByParent, byCheck }: CheckResult) {
  return {
    findings,
    accepted,
    pairs,
    pairsByParent: new Map(pairsByParent),
    byCheck: [...byCheck].map(([name, lists]) => [name, lists.map(({ all }) => all)]),
  };
}

/** A sample plan laid out so many times side by side: lots, earlier crops, marks and sources with it. */
function widePlan(file: string, times: number): Plan {
  const read = readPlan(
    readFileSync(`sample-plots/${file}`, "utf8"),
    file,
    (kind) => book.kind(kind) !== undefined,
  );
  if (!read.ok) throw new Error(`${file} cannot be read`);
  const plan = read.value;
  const layout = layoutOf(plan);
  const copies = <
    T extends { readonly id: string; readonly outline: Plan["earlierCrops"][number]["outline"] },
  >(
    items: readonly T[],
  ): readonly T[] =>
    Array.from({ length: times }, (_, copy) =>
      items.map((item) =>
        copy === 0
          ? item
          : {
              ...item,
              id: `${item.id}-${copy}`,
              outline: moveShape(item.outline, copy * 9, copy * 3),
            },
      ),
    ).flat();
  return {
    ...plan,
    earlierCrops: copies(plan.earlierCrops),
    layouts: [{ ...layout, plantings: copies(layout.plantings), beds: copies(layout.beds) }],
  };
}

/** Up to a quarter of the plantings, at random or side by side, with or without a bed or a source. */
function someIds(random: SeededRandom, plan: Plan): readonly string[] {
  const { plantings, beds } = layoutOf(plan);
  const count = random.whole(2, Math.floor(plantings.length / 4));
  const from = random.whole(0, plantings.length - count);
  const ids = random.chance(0.5)
    ? plantings.slice(from, from + count)
    : Array.from({ length: count }, () => random.pick(plantings));
  const other = random.pick([...beds, ...plan.surroundings]);
  return [...ids.map(({ id }) => id), ...(random.chance(0.3) ? [other.id] : [])];
}

function manyMoved(random: SeededRandom, plan: Plan): Edit {
  const { id } = layoutOf(plan);
  const ids = someIds(random, plan);
  const far = random.pick([0.3, 3, 40]);
  return random.pick([
    () => moveObjects(id, ids, random.between(-far, far), random.between(-far, far)),
    () => moveObjects(id, ids, random.whole(-3, 3) / 2, 0),
    () => turnObjects(id, ids, { x: 10, y: 10 }, random.pick([90, random.between(-40, 40)])),
    () => changePlantings(id, [...ids], { cover: random.pick(["none", "cage", "bags"]) }, "Cover"),
  ])();
}

/**
 * As while dragging, then let go: edits of the plan that is kept, each carried on from the last
 * frame; some frames read, some not; now and then one is kept or taken back.
 */
function drag(random: SeededRandom, first: Plan, read: (plan: Plan) => Plan, steps: number) {
  let kept = first;
  let result = run(read(kept));
  const unread: [Plan, CheckResult][] = [];
  let compared = 0;
  for (let step = 0; step < steps; step += 1) {
    const next = random.chance(0.1) ? kept : manyMoved(random, kept).apply(kept);
    const plan = read(next);
    result = run(plan, result);
    if (random.chance(0.2)) kept = next;
    if (random.chance(0.4)) {
      unread.push([plan, result]);
      continue;
    }
    expect(told(result), `step ${step}`).toEqual(told(run(plan)));
    compared += 1;
  }
  // Those nobody read until now tell what they would have told then.
  for (const [plan, earlier] of unread) {
    expect(told(earlier)).toEqual(told(run(plan)));
    compared += 1;
  }
  return compared;
}

test.each([1, 2, 3, 4, 5, 6])("of a crowded plan, seed %d", (seed) => {
  const random = seededRandom(500 + seed);
  const plan = randomPlan(random, random.pick([40, 120]), random.pick([30, 90]));
  expect(drag(random, plan, (as) => as, 20)).toBeGreaterThan(15);
});

test.each([
  ["walled-garden.json", null],
  ["two-acre-field.json", null],
  ["garden-to-solve.json", null],
  // On days in the middle of its record.
  ["garden-to-solve.json", 20_990],
  ["garden-to-solve.json", 21_060],
])("of %s laid out four times, read on day %s", (file, day) => {
  const random = seededRandom(77);
  const plan = widePlan(file, 4);
  expect(plan.lots.length).toBeGreaterThan(10);
  expect(drag(random, plan, (as) => (day === null ? as : asGrown(as, day)), 16)).toBeGreaterThan(
    12,
  );
});
