/** A plan written as GeoJSON and read again comes to the same verdicts, own kinds and all. */
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planGeojson } from "../../../src/core/exchange/plan-geojson.ts";
import { openPlanText } from "../../../src/core/exchange/open-plan.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { checkLayout } from "../../../src/core/checks/checked-layout.ts";
import type { OwnKind, Plan } from "../../../src/core/model/plan.ts";
import {
  type TrialPlanting,
  bloom,
  layoutOf,
  source,
  trialPlan,
} from "../../support/trial-plan.ts";

const niger: OwnKind = {
  id: "own-kind-1",
  name: "Niger seed",
  group: "own-kind-1",
  lifeCycle: "annual",
  carrier: "insects",
  breeding: "outcrossing",
  isolationM: { home: 300, sale: 900 },
};
/** The built-in carrot as a grower typed it: carried by the wind, through any mesh. */
const windyCarrot: OwnKind = {
  ...niger,
  id: "carrot",
  name: "carrot",
  group: "carrot",
  carrier: "wind",
  lifeCycle: "biennial",
};

const at = (plan: Plan): Plan => ({
  ...plan,
  site: { ...plan.site, position: { latitude: 52.2, longitude: -2.9 } },
});

/** Standing and required metres of every pair that distance does not clear. */
function verdicts(plan: Plan) {
  return checkLayout(plan, layoutOf(plan).id).result.pairs.map(
    ({ seedParent, pollenSource, standing, requiredM, gapDays }) =>
      [seedParent, pollenSource, standing, requiredM, gapDays] as const,
  );
}

function through(plan: Plan): Plan {
  const text = planGeojson(checkLayout(plan, layoutOf(plan).id));
  const read = openPlanText(text, "plan.geojson", cropBook());
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value.plan;
}

describe("a plan through GeoJSON", () => {
  test("keeps own kinds, and own figures of a built-in kind", () => {
    const plan = at(
      trialPlan(
        {
          a: { at: 0, kind: "own-kind-1" },
          b: { at: 20, kind: "own-kind-1" },
          c: { at: 40, kind: "carrot", cover: "cage" },
          d: { at: 45, kind: "carrot", cover: "cage" },
        },
        [],
        { ownKinds: [niger, windyCarrot] },
      ),
    );
    // Through a mesh the wind carries on: a cage clears nothing.
    expect(verdicts(plan).map(([, , standing]) => standing)).toEqual(Array(4).fill("conflict"));
    expect(through(plan).ownKinds).toEqual([niger, windyCarrot]);
    expect(verdicts(through(plan))).toEqual(verdicts(plan));
  });

  test("keeps what wild plants ask beyond the distance", () => {
    const wild = source("w", "wild-carrot", { shape: "point", x: 320, y: 0.5 });
    const far = trialPlan({ p: { at: 0, kind: "carrot", isolationM: undefined, level: "sale" } }, [
      wild,
    ]);
    expect(verdicts(through(at(far)))).toEqual(verdicts(at(far)));
  });

  test("any garden comes to the same verdicts", () => {
    const planting: fc.Arbitrary<TrialPlanting> = fc.record({
      at: fc.integer({ min: 0, max: 900 }),
      kind: fc.constantFrom("own-kind-1", "carrot", "beet", "chard", "maize", "lettuce", "leek"),
      cover: fc.constantFrom("none", "cage", "bags", "hand"),
      purpose: fc.constantFrom("seed", "food"),
      flowering: fc.constantFrom("yes", "yes", "cut", "first-year"),
      level: fc.constantFrom("home", "sale", "stock"),
      isolationM: fc.constantFrom(undefined, undefined, 30),
      keepApart: fc.constantFrom(undefined, true),
      variety: fc.record({ name: fc.constantFrom("Ay", "Bee", "") }),
      bloom: fc.constantFrom(
        null,
        bloom("06-01", "07-10"),
        bloom("07-05", "08-10"),
        bloom("09-01", "09-20"),
      ),
    }) as fc.Arbitrary<TrialPlanting>;
    fc.assert(
      fc.property(fc.array(planting, { minLength: 2, maxLength: 7 }), (list) => {
        const plan = at(
          trialPlan(Object.fromEntries(list.map((each, index) => [`p${index}`, each])), [], {
            ownKinds: [niger, windyCarrot],
          }),
        );
        expect(verdicts(through(plan))).toEqual(verdicts(plan));
      }),
      { seed: 20_270_602, numRuns: 150 },
    );
  });
});

test("a property named __proto__ is refused with its place, not dropped", () => {
  const plan = at(trialPlan({ p: { at: 0, kind: "beet" } }));
  const text = planGeojson(checkLayout(plan, layoutOf(plan).id)).replace(
    '"wideberth": "planting"',
    '"__proto__": 1, "wideberth": "planting"',
  );
  expect(text).toContain("__proto__");
  const read = openPlanText(text, "plan.geojson", cropBook());
  expect(read.ok ? [] : read.problems.map(({ field }) => field)).toEqual([
    "features[0].properties.__proto__",
  ]);
});
