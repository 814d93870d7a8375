/** The table of trials in docs/crossing.md: `UPDATE=1 npx vitest run` writes it anew. */
import { readFileSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import { heldAgainstTrials, trialTable } from "./trial-table.ts";

const PAGE = new URL("../../../docs/crossing.md", import.meta.url);
const BETWEEN = /(<!-- trials -->\n\n)[\s\S]*?(\n\n<!-- end of trials -->)/;

test("docs/crossing.md says by what factor the estimate misses every trial it can be held against", () => {
  const page = readFileSync(PAGE, "utf8");
  const renewed = page.replace(BETWEEN, (_, before, after) => `${before}${trialTable()}${after}`);
  if (process.env["UPDATE"] === "1") writeFileSync(PAGE, renewed);
  expect(readFileSync(PAGE, "utf8")).toBe(renewed);
  expect(page).toMatch(BETWEEN);
});

/** Worked out apart from this code: Iowa by the published kernel, the Philippine field by the fit. */
test.each([
  [1, 1, 36.4],
  [10, 1, 5.78],
  [35, 1, 0.84],
  [100, 1, 0.063],
])("1 ha of maize in 36 ha at %d m", (metres, end, percent) => {
  const held = heldAgainstTrials().find(
    ({ trial, isFitted }) => isFitted && trial.metres[0] === metres,
  );
  expect(Math.abs((held?.estimate[end] ?? 0) / percent - 1)).toBeLessThan(0.02);
});

test("the estimate errs high: no trial found more than its upper end, none less than a twelfth of it", () => {
  const held = heldAgainstTrials().filter(({ factor }) => Number.isFinite(factor));
  expect(held.length).toBeGreaterThan(10);
  for (const { factor, trial } of held) {
    expect(factor, trial.study).toBeGreaterThanOrEqual(1);
    expect(factor, trial.study).toBeLessThan(12);
  }
});
