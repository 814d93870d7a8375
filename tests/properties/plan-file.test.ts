import * as fc from "fast-check";
import { expect, test, vi } from "vitest";
import { readPlan, writePlan } from "../../src/core/model/read-plan.ts";
import { problemText } from "../../src/core/model/problem.ts";
import { arbitraryPlan } from "./arbitrary-plan.ts";

vi.setConfig({ testTimeout: 60_000 });

const isKnownKind = () => true;

test("any plan written and read is the same plan, and written again the same text", () => {
  fc.assert(
    fc.property(arbitraryPlan, (plan) => {
      const text = writePlan(plan);
      const read = readPlan(text, "plan.json", isKnownKind);
      if (!read.ok) throw new Error(read.problems.map(problemText).join("\n"));
      expect(read.value).toEqual(plan);
      expect(writePlan(read.value)).toBe(text);
    }),
    { numRuns: 150 },
  );
});

test("a plan with anything wrong put anywhere is read whole or refused with its place", () => {
  const values = fc.oneof(
    fc.constantFrom<unknown>(null, "", "x", -1, 0, 1e300, true, [], {}, [[]], "2027-02-30"),
    fc.jsonValue(),
  );
  fc.assert(
    fc.property(arbitraryPlan, fc.nat(), values, (plan, where, value) => {
      const raw: unknown = JSON.parse(writePlan(plan));
      const holders = holdersIn(raw);
      const [holder, key] = holders[where % holders.length] as (typeof holders)[number];
      holder[key] = value;
      const read = readPlan(JSON.stringify(raw), "plan.json", isKnownKind);
      if (read.ok) {
        expect(readPlan(writePlan(read.value), "plan.json", isKnownKind)).toEqual(read);
        return;
      }
      for (const problem of read.problems) {
        expect(problemText(problem)).toMatch(/^plan\.json: .+: got .+, expected .+\.$/s);
      }
    }),
    { numRuns: 500 },
  );
});

/** Every place in a value that can be given another one. */
function holdersIn(value: unknown): readonly (readonly [Record<string, unknown>, string])[] {
  if (typeof value !== "object" || value === null) return [];
  const holder = value as Record<string, unknown>;
  return Object.keys(holder).flatMap((key) => [[holder, key] as const, ...holdersIn(holder[key])]);
}
