/** The sample plans print at the ratio they are offered, with every name on the drawing. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { runChecks } from "../../../src/core/checks/run-checks.ts";
import { planBook } from "../../../src/core/kinds/own-kinds.ts";
import { openPlanText } from "../../../src/core/exchange/open-plan.ts";
import { suggestRatio } from "../../../src/core/map/page-plan.ts";
import type { PlotMapSettings } from "../../../src/core/map/map-text.ts";
import { problemText } from "../../../src/core/model/problem.ts";
import { book } from "../../support/paper-garden.ts";
import { print, textOf } from "../../support/printed.ts";

const sheets = [
  ["A4", "landscape"],
  ["Letter", "portrait"],
] as const;

describe.each(["garden-to-solve", "garden-solved", "two-acre-field"])("%s", (name) => {
  const text = readFileSync(new URL(`../../../sample-plots/${name}.json`, import.meta.url), "utf8");
  const opened = openPlanText(text, name, book);
  if (!opened.ok) throw new Error(opened.problems.map(problemText).join("\n"));
  const { plan } = opened.value;

  test.each(
    plan.layouts.flatMap((layout) => sheets.map((sheet) => [layout.name, ...sheet] as const)),
  )("%s on %s %s", async (layoutName, paper, orientation) => {
    const layout = plan.layouts.find((each) => each.name === layoutName);
    if (!layout) throw new Error(layoutName);
    const own = planBook(plan);
    const result = runChecks(plan, layout, own);
    const ratio = suggestRatio(plan, layout, paper, orientation);
    const settings: PlotMapSettings = { paper, orientation, ratio, printedAt: "2027-03-02" };
    const { bytes, unplacedLabels } = await print({ plan, layout, result, book: own }, settings);
    expect(unplacedLabels).toEqual([]);
    const words = textOf(bytes);
    for (const { code } of [...layout.beds, ...layout.plantings]) expect(words).toContain(code);
  });
});
