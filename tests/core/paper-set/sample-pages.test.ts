/**
 * The whole set of every sample plan, read back from the file: how many pages, nothing printed on
 * anything else, no type too small to read, every code and name where it is due.
 */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type CheckedLayout, checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { openPlanText } from "../../../src/core/exchange/open-plan.ts";
import { companionIds } from "../../../src/core/map/companion-ids.ts";
import type { PlotMapSettings } from "../../../src/core/map/map-text.ts";
import { suggestSheets } from "../../../src/core/map/page-plan.ts";
import { problemText } from "../../../src/core/model/problem.ts";
import { usualPaper } from "../../../src/core/page/paper.ts";
import { allMarks } from "../../../src/core/page/scene.ts";
import { book } from "../../support/paper-garden.ts";
import { overlaps, printedWords } from "../../support/printed-words.ts";
import { print, scenes } from "../../support/printed.ts";

function sample(name: string): CheckedLayout {
  const text = readFileSync(new URL(`../../../sample-plots/${name}.json`, import.meta.url), "utf8");
  const opened = openPlanText(text, name, book);
  if (!opened.ok) throw new Error(opened.problems.map(problemText).join("\n"));
  const { plan } = opened.value;
  return checkLayout(plan, plan.chosenLayout ?? plan.layouts[0]?.id ?? "");
}

function settingsOf({ plan, layout }: CheckedLayout): PlotMapSettings {
  const paper = usualPaper(plan.units);
  return {
    paper,
    ...suggestSheets(plan, layout, paper),
    printedAt: "2027-03-02",
    companions: companionIds,
  };
}

/** Points; the smallest that is read in the hand in good light (docs: printing). */
const LEAST_PT = 7;

describe.each([
  ["garden-to-solve", 13],
  ["garden-solved", 14],
  ["two-acre-field", 21],
  ["lane-field", 9],
] as const)("%s", (name, mostPages) => {
  const input = sample(name);
  const settings = settingsOf(input);
  const pages = scenes(input, settings);

  test("takes no more pages than it needs, and none is nearly empty", () => {
    expect(pages.length).toBeLessThanOrEqual(mostPages);
    expect(pages.filter(({ name: page }) => page.startsWith("Map"))).toHaveLength(1);
  });

  test("nothing is printed on anything else", async () => {
    const { bytes, unplacedLabels } = await print(input, settings);
    expect(unplacedLabels).toEqual([]);
    const found = printedWords(bytes).map((words) => overlaps(words));
    expect(Object.fromEntries(found.entries())).toEqual(
      Object.fromEntries(found.map((_, index) => [index, []])),
    );
  });

  test("no type is too small", () => {
    for (const page of pages) {
      for (const mark of allMarks(page.marks)) {
        if (mark.kind === "text")
          expect([mark.text, mark.sizePt >= LEAST_PT - 1e-9]).toEqual([mark.text, true]);
      }
    }
  });
});
