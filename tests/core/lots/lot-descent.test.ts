/** A lot cannot be its own forebear, nor grown from a later harvest: told by name, nothing opened. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { openPlanText } from "../../../src/core/exchange/open-plan.ts";
import { cropBook } from "../../../src/core/kinds/crop-book.ts";
import { lotInPlanFaults } from "../../../src/core/lots/lot-in-plan.ts";
import { problemText } from "../../../src/core/model/problem.ts";
import type { Lot } from "../../../src/core/model/plan.ts";

const sample = new URL("../../../sample-plots/two-acre-field.json", import.meta.url);
type RawLot = Record<string, unknown> & { readonly id: string };
type RawPlan = Record<string, unknown> & { lots: readonly RawLot[] };
const raw = JSON.parse(readFileSync(sample, "utf8")) as RawPlan;

/** The sample with some fields of its lots put in. */
function opened(changes: Readonly<Record<string, object>>) {
  const lots = raw.lots.map((lot) => ({ ...lot, ...changes[lot.id] }));
  return openPlanText(JSON.stringify({ ...raw, lots }), "plan.json", cropBook());
}

function refusals(changes: Readonly<Record<string, object>>): readonly string[] {
  const read = opened(changes);
  return read.ok ? [] : read.problems.map(problemText);
}

describe("a plan is opened", () => {
  test("with its line of three generations", () => {
    expect(refusals({})).toEqual([]);
  });

  test("not when a lot is its own grandparent: the circle is named", () => {
    expect(refusals({ "lot-21": { grownFrom: ["lot-23"] } })).toEqual([
      'plan.json: lots[22] "GF-23", grownFrom: got GF-23 from GF-21 from GF-19 from GF-23, expected lots of which none is its own forebear.',
      'plan.json: lots[20] "GF-19", grownFrom: got GF-23, harvested in 2023, expected a lot of 2019 or earlier.',
    ]);
  });

  test("not when it is a part of itself", () => {
    expect(refusals({ "lot-5": { partOf: ["lot-5"] } })[0]).toContain("AL-25 from AL-25");
  });

  test("not when it was grown from a later harvest", () => {
    expect(
      refusals({ "lot-22": { harvestYear: 2018, tests: undefined, stored: undefined } }),
    ).toEqual([
      'plan.json: lots[21] "GF-21", grownFrom: got GF-19, harvested in 2019, expected a lot of 2018 or earlier.',
    ]);
  });
});

test("a form refuses what a file would be refused for", () => {
  const read = opened({});
  if (!read.ok) throw new Error("not opened");
  const { plan } = read.value;
  const first = plan.lots.find(({ id }) => id === "lot-21") as Lot;
  const faults = lotInPlanFaults(plan, { ...first, grownFrom: ["lot-1"] });
  expect(faults.map(({ field }) => field)).toEqual(["grownFrom", "grownFrom"]);
  expect(lotInPlanFaults(plan, first)).toEqual([]);
});
