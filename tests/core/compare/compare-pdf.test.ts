/** Layouts compared on paper: read back with pdftotext, and looked at as pdftoppm prints them. */
import { describe, expect, test } from "vitest";
import { type CheckedLayout, checkLayouts } from "../../../src/core/checks/checked-layout.ts";
import { compareLayouts } from "../../../src/core/compare/compare-layouts.ts";
import { copyLayout } from "../../../src/core/edits/layout-edits.ts";
import { moveObjects } from "../../../src/core/edits/move-objects.ts";
import { changePlantings, removeObjects } from "../../../src/core/edits/object-edits.ts";
import { type ComparePrint, comparePages } from "../../../src/core/compare/compare-pages.ts";
import { CompareStopped, comparePdf } from "../../../src/core/compare/compare-pdf.ts";
import { measureText, measureTitle } from "../../../src/core/compare/compare-words.ts";
import { pdfWriter } from "../../../src/core/page/pdf-writer.ts";
import { type AreaMark, allMarks } from "../../../src/core/page/scene.ts";
import type { Plan } from "../../../src/core/model/plan.ts";
import { gardenPlan } from "../../support/paper-garden.ts";
import { fonts, rasterise, textOf } from "../../support/printed.ts";

const A4: ComparePrint = { paper: "A4", isOverlaid: false, printedAt: "2027-03-02 09:40" };

/** The garden, a copy with a planting moved, one removed and one caged, and more plain copies. */
function compared(copies = 1): readonly CheckedLayout[] {
  let plan: Plan = gardenPlan();
  const [first, second] = (plan.layouts[0]?.plantings ?? []).map(({ id }) => id);
  for (let number = 2; number < copies + 2; number += 1) {
    plan = copyLayout("layout-1", `layout-${number}`, `Trial ${number}`).apply(plan);
  }
  const third = plan.layouts[0]?.plantings[2]?.id ?? "";
  plan = moveObjects("layout-2", [first ?? ""], 1.5, 0).apply(plan);
  plan = removeObjects("layout-2", [second ?? ""]).apply(plan);
  plan = changePlantings("layout-2", [third], { cover: "cage" }, "").apply(plan);
  return checkLayouts(plan, plan.layouts);
}

const pagesOf = (input: readonly CheckedLayout[], print: ComparePrint = A4) =>
  comparePages(input, print, pdfWriter("", "", fonts).ruler).parts.flatMap((part) => part());

/** Outlines drawn inside the frames of the drawings, with pens of a width. */
function rings(input: readonly CheckedLayout[], print: ComparePrint, penMm: number) {
  const pages = pagesOf(input, print);
  return pages
    .flatMap(({ marks }) => marks)
    .map((mark) =>
      mark.kind === "group"
        ? allMarks(mark.marks).filter(
            (each): each is AreaMark => each.kind === "area" && each.pen?.widthMm === penMm,
          )
        : null,
    )
    .filter((each) => each !== null);
}

describe("layouts compared on paper", () => {
  test("say every measure of every layout and every difference, in words", async () => {
    const input = compared();
    const [{ plan }] = input as [CheckedLayout];
    const { bytes, pages } = await comparePdf(input, A4, fonts);
    const words = textOf(bytes, "-layout");
    expect(pages).toBe(2);
    const comparison = compareLayouts(input);
    for (const measure of comparison.measures) {
      const row = [
        measureTitle(measure.name, comparison),
        ...measure.values.map((value) => measureText(value, measure, plan.units)),
      ];
      // pdftotext guesses at spaces from the gaps.
      expect(words.replaceAll(/\s/g, "")).toContain(row.join("").replaceAll(/\s/g, ""));
    }
    const [moved, removed, caged] = plan.layouts[0]?.plantings ?? [];
    expect(words).toContain("Trial 2 differs from Layout 1");
    expect(words).toMatch(new RegExp(`\\(1\\) ${moved?.code} .*: moved 1.5 m`));
    expect(words).toMatch(new RegExp(`\\(2\\) ${removed?.code} .*: removed`));
    expect(words).toMatch(new RegExp(`\\(3\\) ${caged?.code} .*: under cover: cage`));
    const drawn = pagesOf(input).flatMap(({ marks }) => allMarks(marks));
    const texts = drawn.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
    expect(texts).toContain(`${moved?.code} (1)`);
    expect(texts).toContain(`${removed?.code} (2)`);
  });

  test("are the same bytes each time, and dated", async () => {
    const [one, two] = [
      await comparePdf(compared(), A4, fonts),
      await comparePdf(compared(), A4, fonts),
    ];
    expect(Buffer.from(one.bytes).equals(Buffer.from(two.bytes))).toBe(true);
    expect(textOf(one.bytes)).toContain("printed 2027-03-02 09:40");
  });

  test.each([
    ["A4", 210, 297],
    ["Letter", 215.9, 279.4],
  ] as const)("are printed on %s with nothing at its edge", async (paper, short, long) => {
    const { bytes } = await comparePdf(compared(), { ...A4, paper }, fonts);
    const { width, height, at } = rasterise(bytes, 1);
    const [w, h] = [width, height].toSorted((a, b) => a - b);
    expect(w).toBeCloseTo(short * 10, -1);
    expect(h).toBeCloseTo(long * 10, -1);
    const edge = 60;
    let dark = 0;
    for (let x = 0; x < width; x += 1) {
      for (let y = 0; y < height; y += 1) {
        const isEdge = x < edge || y < edge || x > width - edge || y > height - edge;
        if (isEdge && at(x, y) < 250) dark += 1;
      }
    }
    expect(dark).toBe(0);
  });

  test("draw every layout at the one ratio they name", () => {
    const input = compared();
    const { ratio } = comparePages(input, A4, pdfWriter("", "", fonts).ruler);
    const bedsOf = rings(input, A4, 0.25);
    expect(bedsOf).toHaveLength(2);
    for (const beds of bedsOf) {
      // Beds of the garden are 1.2 m by 11 m.
      expect(beds.length).toBeGreaterThanOrEqual(10);
      const [a, b, c] = beds[0]?.rings[0] ?? [];
      const side = (from = a, to = b) =>
        Math.hypot((to?.x ?? 0) - (from?.x ?? 0), (to?.y ?? 0) - (from?.y ?? 0)) * (ratio / 1000);
      expect([side(a, b), side(b, c)].toSorted((x, y) => x - y)).toEqual([
        expect.closeTo(1.2, 6),
        expect.closeTo(11, 6),
      ]);
    }
  });

  test("overlaid leave out the first by itself and draw what was", () => {
    expect(
      rings(compared(), A4, 0.45).map((old) => old.length),
      "removed",
    ).toEqual([0, 1]);
    const over = { ...A4, isOverlaid: true };
    expect(
      rings(compared(), over, 0.45).map((old) => old.length),
      "and moved",
    ).toEqual([2]);
  });

  test("go on more pages when there are many, four drawings on each", async () => {
    const { bytes, pages } = await comparePdf(compared(8), A4, fonts);
    const words = textOf(bytes);
    expect(pages).toBeGreaterThanOrEqual(4);
    expect(words).toContain("Drawings, page 3 of 3");
    for (let number = 2; number < 10; number += 1) {
      expect(words).toContain(`Trial ${number} differs from Layout 1`);
    }
  });

  test("are refused for one layout alone", () => {
    expect(() => pagesOf(compared().slice(0, 1))).toThrow(RangeError);
  });

  test("tell how far they are, and stop when told to", async () => {
    const steps: (readonly [number, number])[] = [];
    await comparePdf(compared(), A4, fonts, (done, total) => void steps.push([done, total]));
    expect(steps.map(([done]) => done)).toEqual(steps.map((_, index) => index + 1));
    expect(steps.at(-1)?.[0]).toBe(steps.at(-1)?.[1]);
    const signal = { aborted: false };
    const stopped = comparePdf(compared(), A4, fonts, () => void (signal.aborted = true), signal);
    await expect(stopped).rejects.toBeInstanceOf(CompareStopped);
  });
});
