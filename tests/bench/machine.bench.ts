/** A fixed piece of work, the same in every version: by it times of two runs are compared. */
import { expect, test } from "vitest";
import { seeded } from "./field.ts";
import { reportRow } from "./report.ts";
import { bestMs } from "./timing.ts";

test("a fixed piece of work", () => {
  const next = seeded(1);
  const numbers = Float64Array.from({ length: 200_000 }, () => next());
  const { ms, made } = bestMs(15, () => {
    const byName = new Map<string, { readonly sum: number }>();
    let sum = 0;
    for (const value of Float64Array.from(numbers).sort()) {
      sum += Math.sqrt(value);
      byName.set(`n${Math.floor(value * 50_000)}`, { sum });
    }
    return byName;
  });
  expect(made.size).toBeGreaterThan(40_000);
  reportRow({
    section: "Machine",
    what: "a fixed piece of work, by which times of two runs are compared",
    size: "200,000 numbers sorted and kept by name",
    value: ms,
    unit: "ms",
  });
});
