/**
 * The whole set of every sample plan, read back from the file: how many pages, nothing printed on
 * anything else, no type too small to read, every code and name where it is due.
 */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type CheckedLayout, checkLayout } from "../../../src/core/checks/checked-layout.ts";
import { canHurt } from "../../../src/core/checks/safety.ts";
import { openPlanText } from "../../../src/core/exchange/open-plan.ts";
import { companionIds } from "../../../src/core/map/companion-ids.ts";
import type { PlotMapSettings } from "../../../src/core/map/map-text.ts";
import { suggestRatio, suggestSheets } from "../../../src/core/map/page-plan.ts";
import { problemText } from "../../../src/core/model/problem.ts";
import { usualPaper } from "../../../src/core/page/paper.ts";
import { pdfWriter } from "../../../src/core/page/pdf-writer.ts";
import { type Mark, allMarks, text } from "../../../src/core/page/scene.ts";
import { book } from "../../support/paper-garden.ts";
import { nearEdge, overlaps, printedPages, printedWords } from "../../support/printed-words.ts";
import { fonts, print, scenes } from "../../support/printed.ts";

function sample(name: string): CheckedLayout {
  const file = readFileSync(new URL(`../../../sample-plots/${name}.json`, import.meta.url), "utf8");
  const opened = openPlanText(file, name, book);
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

/** Millimetres of white all round; office printers reach to about 4 mm of the edge. Common practice. */
const LEAST_MARGIN_MM = 6;

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

  test("nothing is printed where a printer may not reach", async () => {
    const { bytes } = await print(input, settings);
    expect(printedPages(bytes).flatMap((page) => nearEdge(page, LEAST_MARGIN_MM))).toEqual([]);
  });

  test.each([
    ["A4", "portrait"],
    ["A5", "landscape"],
  ] as const)("nor on %s %s with two cards to a page", async (paper, orientation) => {
    const ratio = suggestRatio(input.plan, input.layout, paper, orientation);
    const other = { ...settings, paper, orientation, ratio, cardsPerPage: 2 as const };
    const { bytes, unplacedLabels } = await print(input, other);
    expect(unplacedLabels).toEqual([]);
    expect(printedWords(bytes).flatMap((words) => overlaps(words))).toEqual([]);
    expect(printedPages(bytes).flatMap((page) => nearEdge(page, LEAST_MARGIN_MM))).toEqual([]);
  });

  test("every code stands once on the map, every variety with it or beside it", () => {
    const [map] = pages;
    const texts = (marks: readonly Mark[]) =>
      allMarks(marks).flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
    const drawing = (map?.marks ?? []).flatMap((mark) => (mark.kind === "group" ? [mark] : []));
    const onGround = texts(drawing);
    const onPage = texts(map?.marks ?? []).join(" ");
    for (const { code, variety } of input.layout.plantings) {
      const own = onGround.filter((words) => words === code || words.startsWith(`${code} `));
      expect([code, own.length]).toEqual([code, 1]);
      const named = input.plan.varieties.find(({ id }) => id === variety)?.name ?? "";
      expect([named, onPage.includes(named) || name === "two-acre-field"]).toEqual([named, true]);
    }
    // Beds without plantings have no card.
    const titles = pages
      .filter(({ name: page }) => page.startsWith("Bed cards"))
      .flatMap(({ marks }) => texts(marks));
    for (const bed of input.layout.beds) {
      const isPlanted = input.layout.plantings.some((each) => each.bed === bed.id);
      expect([bed.code, titles.includes(`Bed ${bed.code}`)]).toEqual([bed.code, isPlanted]);
    }
  });

  test("what can hurt somebody stands before all else beside the map", () => {
    const sides = (["landscape", "portrait"] as const).map((orientation) => {
      const [map] = scenes(input, { ...settings, orientation, ratio: 1000 });
      return (map?.marks ?? []).flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
    });
    const cautions = [...input.result.findings, ...input.result.accepted].filter(canHurt);
    for (const words of sides) {
      const at = (start: string) => words.findIndex((each) => each.startsWith(start));
      expect(words.filter((each) => each.startsWith("Caution: "))).toHaveLength(cautions.length);
      if (cautions.length > 0) expect(at("Caution: ")).toBeLessThan(at("Hatch: "));
    }
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

test("words printed on each other are found", async () => {
  const writer = pdfWriter("", "", fonts);
  const page = { widthMm: 100, heightMm: 50, name: "one" };
  const at = (x: number, y: number, words: string) => text({ x, y }, words, 10);
  writer.addPage({
    ...page,
    marks: [at(10, 20, "Tarn"), at(13, 20.5, "Coral"), at(60, 20, "far")],
  });
  const [words = []] = printedWords(await writer.finish());
  expect(overlaps(words)).toHaveLength(1);
});

test.each([
  ["the left", 3, 25],
  ["the top", 40, 4],
  ["the right", 88, 25],
  ["the bottom", 40, 46],
] as const)("words too near to %s edge are found", async (_, x, y) => {
  const writer = pdfWriter("", "", fonts);
  const marks = [text({ x: 40, y: 25 }, "inside", 10), text({ x, y }, "Tarn", 10)];
  writer.addPage({ widthMm: 100, heightMm: 50, name: "one", marks });
  const found = printedPages(await writer.finish()).flatMap((page) => nearEdge(page, 6));
  expect(found.map((each) => each.split(" ")[0])).toEqual(["Tarn"]);
});
