import { describe, expect, test } from "vitest";
import { keptOf } from "../../../src/core/checks/carried-run.ts";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import { moveObjects } from "../../../src/core/edits/move-objects.ts";
import { touchingPairs } from "../../../src/core/nearness/touching-pairs.ts";
import type { Layout } from "../../../src/core/model/plan.ts";
import { book, fieldPlan, seeded } from "../../bench/field.ts";

const plan = fieldPlan(300, 3, 7);
const layout = plan.layouts[0] as Layout;

describe("pairs of some things", () => {
  test("are those among all pairs, however many are asked for and whatever has moved", () => {
    const next = seeded(11);
    let result = runChecks(plan, layout, book);
    let found = 0;
    for (const count of [1, 2, 5, 40, 41, 120, 1, 3]) {
      const ids = new Set(Array.from({ length: count }, () => `p${Math.floor(next() * 300)}`));
      const own = touchingPairs(keptOf(result), ids);
      expect(own).toEqual(
        result.pairs.filter((pair) => ids.has(pair.seedParent) || ids.has(pair.pollenSource)),
      );
      found += own.length;
      const moved = moveObjects(layout.id, [...ids].slice(0, 3), 4, -3).apply(result.of.plan);
      result = runChecks(moved, moved.layouts[0] as Layout, book, result);
    }
    expect(found).toBeGreaterThan(100);
  });

  test("of what is not there, there are none", () => {
    const result = runChecks(plan, layout, book);
    expect(touchingPairs(keptOf(result), new Set(["nothing"]))).toEqual([]);
  });
});
