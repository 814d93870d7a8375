/**
 * The isolation check of a whole plan against JSTS and GEOS on the same plantings in the same run:
 * the same pairs, the largest difference, how many times faster, and how time grows.
 */
import { expect, test } from "vitest";
import type { IsolationPair } from "../../src/core/checks/isolation-pair.ts";
import type { Layout } from "../../src/core/model/plan.ts";
import { fieldPlan, REQUIRED_M } from "./field.ts";
import { geosRun, jstsPairs, type PeerPairs } from "./peers.ts";
import { reportRow } from "./report.ts";
import { shippedCore } from "./shipped-core.ts";
import { bestMs, growthExponent } from "./timing.ts";

const { cropBook, isolationPairs, resolveStands } = await shippedCore();
const book = cropBook();
const section = "Whole-plan check";
const times = new Map<number, (readonly [number, number])[]>();

/** That the pairs are the same, in words; fails when one has a pair that the other has not. */
function sameness(ours: readonly IsolationPair[], theirs: PeerPairs): string {
  let worst = 0;
  for (const { seedParent, pollenSource, distanceM } of ours) {
    const other = theirs.get(`${seedParent} ${pollenSource}`) ?? Infinity;
    worst = Math.max(worst, Math.abs(distanceM - other));
  }
  expect(ours.length).toBe(theirs.size);
  expect(worst).toBeLessThan(1e-9);
  return `the same ${ours.length.toLocaleString("en")} pairs, at most ${worst.toExponential(0)} m different`;
}

/** How often to measure: a large field takes its time. */
const RUNS: Readonly<Record<number, number>> = { 1000: 25, 10_000: 15, 100_000: 4 };

test.each([
  [1000, 1],
  [1000, 8],
  [10_000, 1],
  [10_000, 8],
  [100_000, 1],
  [100_000, 8],
])("%d plantings in %d crossing groups", (count, groups) => {
  const plan = fieldPlan(count, groups);
  const layout = plan.layouts[0] as Layout;
  const stands = resolveStands(plan, layout, book);
  const size = `${count.toLocaleString("en")} plantings, ${groups} crossing groups`;
  const runs = RUNS[count] ?? 1;
  const { ms: oursMs, made } = bestMs(runs, () =>
    isolationPairs(resolveStands(plan, layout, book), book),
  );
  const ours = made.pairs;
  times.set(groups, [...(times.get(groups) ?? []), [count, oursMs]]);
  const row = { section, size };
  reportRow({ ...row, what: "all pairs", value: oursMs, unit: "ms" });

  const jsts = bestMs(count > 10_000 ? 1 : 3, () => jstsPairs(stands, REQUIRED_M));
  reportRow({
    ...row,
    what: `all pairs, against JSTS; ${sameness(ours, jsts.made)}`,
    value: jsts.ms / oursMs,
    unit: "x",
    moreIsBetter: true,
    ...(count === 10_000 ? { budget: "at least 10 x", isMet: jsts.ms / oursMs >= 10 } : {}),
  });

  const geos = geosRun(stands, REQUIRED_M);
  if (geos === null) {
    const value =
      "absent (Debian 12's 1.8 is too old): python3 -m venv .build/geos && .build/geos/bin/pip install 'shapely>=2'";
    reportRow({ ...row, what: "all pairs, against GEOS", value, unit: "" });
    return;
  }
  const route = geos.route.replaceAll("_", " ");
  const name = `${geos.geos} (Shapely ${geos.shapely}, ${route})`;
  reportRow({
    ...row,
    what: `all pairs, against GEOS; ${name}, ${sameness(ours, geos.pairs)}`,
    value: geos.ms / oursMs,
    unit: "x",
    moreIsBetter: true,
    ...(count >= 10_000 ? { budget: "goal: at least 2 x", isMet: geos.ms >= 2 * oursMs } : {}),
  });
});

test("time grows little faster than the number of plantings", () => {
  for (const [groups, measured] of times) {
    const value = growthExponent(measured);
    reportRow({
      section,
      what: "growth exponent of all pairs (1: twice the plantings, twice the time)",
      size: `1,000 to 100,000 plantings, ${groups} crossing groups`,
      value,
      unit: "",
    });
    expect(value).not.toBeNaN();
  }
});
