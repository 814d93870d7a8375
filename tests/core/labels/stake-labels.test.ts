/** Labels on their sheets, and codes read back by another library from what is printed. */
import * as fc from "fast-check";
import jsqr from "jsqr";
import { describe, expect, test } from "vitest";
import { packetLabels } from "../../../src/core/labels/packet-facts.ts";
import { stakeLabels } from "../../../src/core/labels/stake-facts.ts";
import { labelPages } from "../../../src/core/labels/label-pages.ts";
import {
  MEASURES_EXAMPLE,
  labelFaults,
  measureFaults,
  measuredSize,
  readMeasures,
  usualMeasures,
} from "../../../src/core/labels/label-measures.ts";
import { labelSizes, labelsOnSheet, usualLabelSize } from "../../../src/core/labels/label-sizes.ts";
import { labelsPdf } from "../../../src/core/labels/labels-pdf.ts";
import { pdfWriter } from "../../../src/core/page/pdf-writer.ts";
import { type Mark, allMarks } from "../../../src/core/page/scene.ts";
import type { Lot } from "../../../src/core/model/plan.ts";
import { day, gardenPlan, mapInput } from "../../support/paper-garden.ts";
import { withLots } from "../../support/with-lots.ts";
import { PX_PER_MM, type Raster, fonts, rasterise, textOf } from "../../support/printed.ts";

const garden = mapInput(withLots(gardenPlan(), (index) => `26-AB-${index}`));
const { ruler } = pdfWriter("", "", fonts);
const plain = { startAt: 1, hasQr: false, treatment: "" };

function wordsOf(marks: readonly Mark[]) {
  return allMarks(marks).flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
}

/** The part of a page from x to x + width and y to y + height, mm, as the reader wants it. */
function readCode(
  raster: Raster,
  x: number,
  y: number,
  width: number,
  height: number,
  least = 128,
) {
  const [w, h] = [Math.round(width * PX_PER_MM), Math.round(height * PX_PER_MM)];
  const pixels = new Uint8ClampedArray(w * h * 4).fill(255);
  for (let row = 0; row < h; row += 1) {
    for (let column = 0; column < w; column += 1) {
      const grey = raster.at(Math.round(x * PX_PER_MM) + column, Math.round(y * PX_PER_MM) + row);
      pixels.fill(grey < least ? 0 : 255, (row * w + column) * 4, (row * w + column) * 4 + 3);
    }
  }
  return jsqr(pixels, w, h)?.data ?? null;
}

describe("sizes", () => {
  test.each(labelSizes.map((size) => [size.id, size] as const))("%s adds up", (_, size) => {
    expect(labelFaults(size, labelsOnSheet(size))).toEqual([]);
    expect(labelFaults(size, labelsOnSheet(size) + 1).join()).toContain("First label");
  });

  test("a bought sheet is read by its measures, with a decimal comma and without a pitch", () => {
    expect(readMeasures(MEASURES_EXAMPLE)).toMatchObject({ ok: true, measures: usualMeasures });
    const read = readMeasures("page=210x297 label=70x37,1 columns=3 rows=8 left=0 top=0 fold=over");
    expect(read).toMatchObject({
      ok: true,
      measures: { labelHeight: 37.1, pitchAcross: 70, pitchDown: 37.1, fold: "over" },
    });
  });

  test.each([
    ["label lie on each other", { pitchAcross: 60 }, "pitchAcross", "on each other by 3.5 mm"],
    ["rows lie on each other", { pitchDown: 30 }, "pitchDown", "on each other by 8 mm"],
    ["columns leave the page", { leftMargin: 20 }, "columns", "past the page's 210 mm"],
    ["rows leave the page", { rows: 8 }, "rows", "past the page's 297 mm"],
    ["a label is too small to print on", { labelHeight: 5 }, "labelHeight", "10 to 1000 mm"],
    ["there is half a column", { columns: 2.5 }, "columns", "a whole number"],
    ["a stake has no room", { fold: "round" as const }, "labelWidth", "90 to 1000 mm"],
  ])("measures are refused by the field's name where %s", (_, change, field, words) => {
    const faults = measureFaults({ ...usualMeasures, ...change });
    expect(faults.map((fault) => fault.field)).toContain(field);
    expect(faults.map((fault) => fault.words).join()).toContain(words);
  });

  test("a line of measures that cannot be read says which and why", () => {
    const problems = (text: string) => {
      const read = readMeasures(text);
      return read.ok ? [] : read.problems.join("; ");
    };
    expect(problems("page=210x297 label=63 columns=3 rows=7 left=7 top=15")).toContain(
      "label: got",
    );
    expect(problems("colums=3")).toContain('got "colums"');
    expect(problems("page=210x297 label=80x38 columns=3 rows=7 left=7 top=15")).toContain(
      "Columns",
    );
  });
});

test("labels begin where asked, and lie on their pages", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...labelSizes),
      fc.integer({ min: 1, max: 60 }),
      (size, startAt) => {
        const { pages } = labelPages(stakeLabels(garden), { ...plain, size, startAt }, ruler);
        const groups = pages.flatMap(({ marks }) => marks.filter((mark) => mark.kind === "group"));
        const sides = size.fold === "flat" ? 1 : 2;
        expect(groups).toHaveLength(garden.layout.plantings.length * sides);
        for (const { clip } of groups) {
          expect(clip.left + clip.width).toBeLessThanOrEqual(size.page.widthMm + 0.001);
          expect(clip.top + clip.height).toBeLessThanOrEqual(size.page.heightMm + 0.001);
        }
        const [first] = groups;
        const place = (startAt - 1) % (size.columns * size.rows);
        expect(first?.clip.left).toBeCloseTo(size.left + (place % size.columns) * size.pitchX, 6);
      },
    ),
    { numRuns: 12 },
  );
});

test("a stake says code, variety, kind, date, plants, lot, and what not to do", () => {
  const size = usualLabelSize("m", false);
  const { pages, lost } = labelPages(stakeLabels(garden), { ...plain, size }, ruler);
  expect(lost).toEqual([]);
  const words = wordsOf(pages[0]?.marks ?? []).join(" ");
  for (const part of [
    "B02-1",
    "Amber Lantern, tomato",
    "Set out 20 May 2027 (planned)",
    "Lot 26-AB-0",
  ]) {
    expect(words).toContain(part);
  }
  expect(words).toContain("do not pick");
  const codes = allMarks(pages[0]?.marks ?? []).filter(
    (mark) => mark.kind === "text" && /^[AB]0\d-\d$/.test(mark.text),
  );
  for (const code of codes) expect(code.kind === "text" && code.sizePt).toBeGreaterThanOrEqual(30);
});

test("a packet says what is known, leaves room for what is not, and loses no word", () => {
  const size = usualLabelSize("m", true);
  const facts = packetLabels(garden, "thiram, not to be eaten");
  const { pages, lost } = labelPages(facts, { ...plain, size }, ruler);
  expect(lost).toEqual([]);
  const words = pages
    .flatMap(({ marks }) => wordsOf(marks))
    .join(" ")
    .replace(/\s+/g, " ");
  for (const part of [
    "Amber Lantern",
    "Solanum lycopersicum",
    "Harvest 2027",
    "Grown at Fallow End",
    "Saved from 40 plants",
    "Isolation planned:",
    "Germination ____",
    // What it was sown from is not its own lot.
    "Lot ______ · sown from 26-AB-0",
    "TREATED SEED: thiram",
  ]) {
    expect(words).toContain(part);
  }
  expect(words).not.toContain("Kettle Dun 60");
});

describe("a packet of seed that is on the shelf already", () => {
  const plan = gardenPlan();
  const planted = plan.layouts[0]?.plantings.find(({ code }) => code === "B02-1");
  const test2027 = (more: object) => ({
    id: "t1",
    date: day("2027-11-20"),
    sown: 100,
    sprouted: 91,
    ...more,
  });
  const warningOf = (more: Partial<Lot>) => linesOf(more).warning;
  const linesOf = (more: Partial<Lot>) => {
    const harvested: Lot = {
      id: "h1",
      code: "AL-27-01",
      variety: planted?.variety ?? "",
      state: "in stock",
      harvestYear: 2027,
      from: { what: "own", plot: "B02-1", season: plan.season.name },
      ...more,
    };
    const labels = packetLabels(mapInput({ ...plan, lots: [harvested] }), "");
    const found = labels.find(({ lines }) => lines.some((line) => line.includes("plot B02-1")));
    if (!found) throw new Error("no packet of B02-1");
    return found;
  };

  test("has the rate and month of its latest test, and its own lot", () => {
    const { lines, missing, warning } = linesOf({
      tests: [test2027({}), test2027({ id: "t0", date: day("2027-10-01"), sprouted: 40 })],
    });
    expect(lines).toContain("Germination 91 %  tested Nov 2027");
    expect(lines.find((line) => line.startsWith("Lot"))).toMatch(/^Lot AL-27-01(  ·|$)/);
    expect(warning).toBe("");
    expect(missing).not.toContain("germination and month of the test");
  });

  test("under the 75 % of 7 CFR 201.31 says Below Standard; hard seed counts for it, apart", () => {
    expect(warningOf({ tests: [test2027({ sprouted: 74 })] })).toBe("Below Standard");
    expect(warningOf({ tests: [test2027({ sprouted: 75 })] })).toBe("");
    const { lines, warning } = linesOf({ tests: [test2027({ sprouted: 70, hard: 6 })] });
    expect(lines).toContain("Germination 70 %, hard seed 6 %  tested Nov 2027");
    expect(warning).toBe("");
  });

  test("says what it was treated with, or leaves room for it", () => {
    expect(warningOf({ treatedWith: "thiram" })).toBe("TREATED SEED: thiram");
    expect(warningOf({ treated: true })).toBe("TREATED SEED: ______");
  });

  test("never bears the test of another season, plot or variety", () => {
    const tests = [test2027({})];
    for (const other of [
      { from: { what: "own" as const, plot: "B02-1", season: "2026" } },
      { from: { what: "own" as const, plot: "B03-1", season: plan.season.name } },
      { from: { what: "received" as const } },
      { state: "discarded" as const },
    ]) {
      expect(linesOf({ tests, ...other }).lines).toContain("Germination ____ %  tested ________");
    }
  });
});

test("words that find no room are named", () => {
  const tiny = measuredSize({
    ...usualMeasures,
    labelWidth: 30,
    labelHeight: 12,
    columns: 4,
    rows: 10,
    leftMargin: 10,
    topMargin: 10,
    pitchAcross: 40,
    pitchDown: 20,
  });
  const { lost } = labelPages(packetLabels(garden, ""), { ...plain, size: tiny }, ruler);
  expect(lost.length).toBeGreaterThan(0);
  expect(lost.join(" ")).toContain("Germination");
});

test("packets come with a page on the law of the place", async () => {
  const choice = { ...plain, size: usualLabelSize("m", true) };
  const { bytes } = await labelsPdf(garden, "packets", choice, "2027-03-02", fonts);
  expect(textOf(bytes)).toContain("These labels certify nothing");
});

describe("the code on a stake", () => {
  const size = usualLabelSize("m", false);
  const whole = async (least: number) => {
    const choice = { ...plain, size, hasQr: true };
    const raster = rasterise((await labelsPdf(garden, "stakes", choice, "2027", fonts)).bytes, 1);
    return stakeLabels(garden).map(({ machine }, index) => {
      const x = size.left + (index % size.columns) * size.pitchX;
      const y = size.top + Math.floor(index / size.columns) * size.pitchY;
      const { widthMm, heightMm } = size.label;
      return [machine, readCode(raster, x, y, widthMm, heightMm, least)];
    });
  };

  test.each([60, 128, 200])("is read back from the print cut at grey %i", async (least) => {
    for (const [machine, read] of await whole(least)) expect(read).toBe(machine);
  });

  test("holds letters of any script", async () => {
    const plan = gardenPlan();
    const named = mapInput(withLots(plan, (index) => `Łąka-Я-${index}`));
    const choice = { ...plain, size: usualLabelSize("m", true), hasQr: true };
    const raster = rasterise((await labelsPdf(named, "stakes", choice, "2027", fonts)).bytes, 1);
    const { left, top, label } = choice.size;
    const read = readCode(raster, left, top, label.widthMm, label.heightMm);
    expect(read).toBe(stakeLabels(named)[0]?.machine);
  });
});
