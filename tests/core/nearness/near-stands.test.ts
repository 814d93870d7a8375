import { expect, test } from "vitest";
import { nearStands } from "../../../src/core/nearness/near-stands.ts";
import { type Stand, resolveStands } from "../../../src/core/checks/stand.ts";
import type { Layout } from "../../../src/core/model/plan.ts";
import { book, fieldPlan } from "../../bench/field.ts";
import { seededRandom } from "../../properties/seeded-random.ts";

function fieldStands(count: number): readonly Stand[] {
  const plan = fieldPlan(count, 1);
  return resolveStands(plan, plan.layouts[0] as Layout, book);
}

/** Some with a reach of their own, none known, or an outline as large as the field. */
function mixed(stands: readonly Stand[], seed: number): readonly Stand[] {
  const random = seededRandom(seed);
  return stands.map((stand) => {
    const metres = random.pick([0, 3, 10, 80, 1000]);
    const requirement =
      stand.requirement && random.chance(0.95) ? { ...stand.requirement, metres } : null;
    const { minX, minY } = stand.outline.bounds;
    const wide = random.between(20, 400);
    const bounds = random.chance(0.05)
      ? { minX, minY, maxX: minX + wide, maxY: minY + wide }
      : stand.outline.bounds;
    const reachM = requirement?.metres ?? Infinity;
    return { ...stand, requirement, reachM, outline: { ...stand.outline, bounds } };
  });
}

test("near is what a look at every stand finds, in the same order", () => {
  for (let seed = 1; seed <= 5; seed += 1) {
    const group = mixed(fieldStands(150 + seed), seed);
    const index = nearStands(group);
    expect([...(index?.order ?? [])].sort((a, b) => a - b)).toEqual([...group.keys()]);
    for (const place of seed % 2 === 0 ? group.keys() : (index?.order ?? [])) {
      const parent = group[place] as Stand;
      const { minX, minY, maxX, maxY } = parent.outline.bounds;
      const reach = parent.requirement?.metres ?? Infinity;
      const expected = group.filter(
        ({ outline: { bounds } }) =>
          bounds.minX <= maxX + reach &&
          bounds.maxX >= minX - reach &&
          bounds.minY <= maxY + reach &&
          bounds.maxY >= minY - reach,
      );
      expect(index?.near(place).map((near) => group[near]?.id)).toEqual(
        expected.map(({ id }) => id),
      );
    }
  }
});

test("a large field has few candidates for each stand, and a small group no index", () => {
  const group = fieldStands(10_000);
  const index = nearStands(group);
  let candidates = 0;
  for (const place of index?.order ?? []) candidates += index?.near(place).length ?? 0;
  // About eight neighbours within reach, a few in the corners of the box around it, and itself.
  expect(candidates / group.length).toBeLessThan(13);
  expect(nearStands(group.slice(0, 20))).toBeNull();
});
