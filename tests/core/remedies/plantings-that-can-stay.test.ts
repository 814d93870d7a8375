/** How many of a tangle can stay, against all subsets counted through. */
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { tangleOf, tangleWords } from "../../../src/core/remedies/plantings-that-can-stay.ts";
import type { IsolationFinding } from "../../../src/core/checks/isolation-findings.ts";
import type { Finding } from "../../../src/core/checks/all-checks.ts";
import {
  bed,
  checked,
  gardenPlan,
  planting,
  square,
  variety,
} from "../../support/arrange-garden.ts";

function isConflict(finding: Finding): finding is IsolationFinding {
  return finding.check === "isolation" && finding.severity === "conflict";
}

test("property: no larger set of the tangle is free of conflicts, and the one given is", () => {
  const place = fc.integer({ min: 0, max: 12 });
  let compared = 0;
  fc.assert(
    fc.property(fc.array(fc.tuple(place, place), { minLength: 3, maxLength: 8 }), (places) => {
      fc.pre(new Set(places.map(String)).size === places.length);
      const result = checked(
        gardenPlan(
          places.map((_, index) => variety(`v${index}`, "tomato", { isolationM: 8 })),
          [bed("b", 24, 24, 80, 80)],
          places.map(([x, y], index) =>
            planting(`p${index}`, `v${index}`, { outline: square(x * 3, y * 3, 1), bed: "b" }),
          ),
        ),
      );
      const conflicts = result.findings.filter(isConflict);
      const [first] = conflicts;
      fc.pre(first !== undefined);
      const tangle = tangleOf(result, first);
      if (!tangle) return;
      compared += 1;
      const isPeaceful = (ids: readonly string[]) =>
        conflicts.every(({ subjects }) => !subjects.every((id) => ids.includes(id)));
      let largest = 0;
      for (let mask = 0; mask < 2 ** tangle.ids.length; mask += 1) {
        const chosen = tangle.ids.filter((_, index) => (mask >> index) % 2 === 1);
        if (chosen.length > largest && isPeaceful(chosen)) largest = chosen.length;
      }
      expect(tangle.canStay).toHaveLength(largest);
      expect(isPeaceful(tangle.canStay)).toBe(true);
    }),
    // About one garden in four is a tangle.
    { numRuns: 400 },
  );
  expect(compared).toBeGreaterThan(30);
});

test("a pair is no tangle; three in a row leave two", () => {
  const at = (...xs: readonly number[]) =>
    checked(
      gardenPlan(
        xs.map((_, index) => variety(`v${index}`, "tomato", { isolationM: 8 })),
        [bed("b", 0, 0, 100, 10)],
        xs.map((x, index) =>
          planting(`p${index}`, `v${index}`, { outline: square(x, 0, 1), bed: "b" }),
        ),
      ),
    );
  const pair = at(0, 5);
  expect(tangleOf(pair, pair.findings.find(isConflict) as IsolationFinding)).toBeNull();
  const row = at(0, 6, 12);
  const tangle = tangleOf(row, row.findings.find(isConflict) as IsolationFinding);
  expect(tangle?.canStay).toEqual(["p0", "p2"]);
  expect(tangle && tangleWords(tangle, (id) => id)[1]).toBe(
    "Where they lie now, at most 2 of them can stay as they are, for example p0, p2; at least 1 must move, flower at another time, be covered or give no seed.",
  );
});
