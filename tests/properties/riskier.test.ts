/**
 * A garden that becomes riskier never gets a milder verdict for any pair: clear by distance, time
 * or cover, then caution, then "cannot be told", then conflict. Nothing becomes clear by risk.
 */
import * as fc from "fast-check";
import { describe, expect, test, vi } from "vitest";
import { describeNothing, givenOf } from "../support/screen-verdicts.ts";
import { type Verdict, type VerdictGarden, gardenPlan } from "../support/verdict-garden.ts";
import { type Given, verdictGiven } from "../support/verdict-given.ts";
import { type RiskyChange, riskyChanges } from "./riskier-changes.ts";
import { riskGardens } from "./riskier-gardens.ts";

vi.setConfig({ testTimeout: 120_000 });

/** Pairs of gardens tried of each change. */
const CASES = Number(process.env["WIDEBERTH_RISKS"] ?? 200);

const SEVERITY: Readonly<Record<Verdict, number>> = {
  none: 0,
  distance: 0,
  time: 0,
  cover: 0,
  clear: 0,
  caution: 1,
  unknown: 2,
  conflict: 3,
};

function given(garden: VerdictGarden): Given {
  return givenOf(gardenPlan(garden), describeNothing);
}

/** Pairs that a change made milder. */
function milder(garden: VerdictGarden, after: VerdictGarden, change: RiskyChange) {
  const [was, is] = [given(garden), given(after)];
  return was.pairs.flatMap(({ seedParent, pollenSource }) => {
    const [p, q] = [String(seedParent), String(pollenSource)];
    const [before, now] = [verdictGiven(was, p, q), verdictGiven(is, p, q)];
    const isUntold = change.isOfDates && before === "conflict" && now === "unknown";
    return SEVERITY[now] >= SEVERITY[before] || isUntold
      ? []
      : [`${p}<-${q}: ${before}, then ${now}`];
  });
}

describe("no verdict becomes milder by", () => {
  test.each(riskyChanges.map((change) => [change.name, change] as const))("%s", (_, change) => {
    const garden = riskGardens(change.kinds);
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    const changed = fc
      .tuple(garden, part)
      .map(([from, by]) => change.apply(from, by))
      .filter((found) => found !== null);
    fc.assert(
      fc.property(changed, ([before, after]) => {
        expect(milder(before, after, change)).toEqual([]);
      }),
      { seed: 20_270_101, numRuns: CASES },
    );
  });
});
