/** What can still be done on a day: each remedy, written into the record, clears what it says. */
import { describe, expect, test } from "vitest";
import type { Entry, Plan } from "../../../src/core/model/plan.ts";
import { checkAsGrown } from "../../../src/core/record/as-grown.ts";
import { fieldRemedies } from "../../../src/core/record/field-remedies.ts";
import { bloom, day, source, squareAt, trialPlan } from "../../support/trial-plan.ts";

let count = 0;
const entry = (of: string, on: string, what: Entry["what"], more: Partial<Entry> = {}): Entry => ({
  id: `e-${(count += 1)}`,
  of,
  on: day(`2027-${on}`),
  what,
  ...more,
});

const JUNE = bloom("06-10", "06-30");
/** A carrot for seed; another one to eat beside it, and a neighbour's. */
const garden = (entries: readonly Entry[], isEaten = true) =>
  trialPlan(
    {
      p: { at: 0, kind: "carrot", bloom: JUNE },
      ...(isEaten ? { q: { at: 6, kind: "carrot", purpose: "food" as const, bloom: JUNE } } : {}),
    },
    isEaten ? [] : [source("next", "carrot", squareAt(30), { bloom: JUNE })],
    { entries },
  );

function remediesOn(plan: Plan, iso: string) {
  const on = day(`2027-${iso}`);
  const grown = checkAsGrown(plan, "layout-1", on);
  const finding = grown.result.findings.find(({ check }) => check === "isolation");
  if (!finding) throw new Error("no conflict to mend");
  return { on, finding, remedies: fieldRemedies(plan, grown, finding, on) };
}

const titles = (plan: Plan, iso: string) =>
  remediesOn(plan, iso).remedies.map(({ title }) => title);

describe("what is offered", () => {
  test("before bloom: cover what keeps seed, cut what is eaten, or give up the seed; no place, no sowing", () => {
    expect(titles(garden([]), "06-01")).toEqual([
      "Put a cage over P",
      "Cut Q before it flowers",
      "Keep no seed of P",
    ]);
  });

  test("once flowers may have opened only the seed is left to give up", () => {
    const open = [entry("p", "06-10", "first flower"), entry("q", "06-10", "first flower")];
    expect(titles(garden(open), "06-12")).toEqual(["Keep no seed of P"]);
  });

  test("a source in flower is cut with its open flowers while the seed parent is still shut", () => {
    const early = [entry("q", "05-10", "first flower"), entry("p", "05-20", "looked at")];
    const { remedies } = remediesOn(garden(early), "05-20");
    const cut = remedies.find(({ title }) => title === "Cut Q now, every open flower");
    expect(cut?.entries).toMatchObject([{ of: "q", what: "last flower", on: day("2027-05-20") }]);
  });

  test("what may have opened unseen is not said to be cut before it flowered", () => {
    expect(titles(garden([]), "06-12")).not.toContain("Cut Q before it flowers");
  });

  test("of two squashes for seed both are pollinated by hand, as one keeps no other's seed true", () => {
    const squash = { kind: "summer-squash", bloom: JUNE };
    const both = trialPlan({ p: { at: 0, ...squash }, q: { at: 6, ...squash } });
    const { remedies } = remediesOn(both, "06-01");
    const covers = remedies.filter(({ entries }) => entries.length > 0);
    expect(covers.map(({ title }) => title)).toEqual(["Pollinate P and Q by hand"]);
    expect(covers[0]?.entries.map(({ of, cover }) => [of, cover])).toEqual([
      ["p", "hand"],
      ["q", "hand"],
    ]);
  });

  test("a neighbour is asked", () => {
    expect(titles(garden([], false), "06-01")).toContain(
      "Ask that Source next be cut before it flowers",
    );
  });
});

test("each one, written down, takes its finding away and brings no conflict", () => {
  const plan = garden([]);
  const { on, finding, remedies } = remediesOn(plan, "06-01");
  expect(remedies.length).toBeGreaterThan(2);
  for (const { entries, edit, title } of remedies) {
    const done = edit ? edit.apply(plan) : plan;
    const made = entries.map((each, at) => ({ ...each, id: `done-${at}` }));
    const written = { ...done, entries: [...done.entries, ...made] };
    const { findings } = checkAsGrown(written, "layout-1", on).result;
    expect(
      findings.map(({ id }) => id),
      title,
    ).not.toContain(finding.id);
    expect(
      findings.some(({ severity }) => severity === "conflict"),
      title,
    ).toBe(false);
  }
});
