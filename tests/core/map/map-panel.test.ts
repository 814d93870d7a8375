/** The panel beside the map: what it has no room for is counted, what the edge cuts is named. */
import { describe, expect, test } from "vitest";
import { cutNames } from "../../../src/core/map/beyond-map.ts";
import { countText, numberedWords } from "../../../src/core/map/finding-items.ts";
import { mapContent } from "../../../src/core/map/map-items.ts";
import { pageFrame } from "../../../src/core/page/page-frame.ts";
import { planSheets } from "../../../src/core/map/page-plan.ts";
import { type AreaMark, type Page, allMarks } from "../../../src/core/page/scene.ts";
import { indexCell } from "../../../src/core/map/sheet-index.ts";
import {
  gardenPlan,
  mapInput,
  planOf,
  planting,
  rectangle,
  source,
  variety,
} from "../../support/paper-garden.ts";
import { a4, print, rasterise, scenes, textOf } from "../../support/printed.ts";

const two = (index: number) => String(index + 1).padStart(2, "0");

/** A row of lettuces that each have something to be said of, and sources far off. */
function crowded(count: number, sources = 0) {
  return mapInput(
    planOf(
      {
        varieties: Array.from({ length: count }, (_, index) =>
          variety(`v${index}`, `Variety ${two(index)}`, "lettuce", { isolationM: 3 }),
        ),
        surroundings: Array.from({ length: sources }, (_, index) =>
          source(`s${index}`, `Far lettuce ${index}`, { shape: "point", x: 400 + index, y: 0 }),
        ),
      },
      [],
      Array.from({ length: count }, (_, index) =>
        planting(`p${index}`, `A${two(index)}`, `v${index}`, rectangle(index * 3, 0, 1.5, 2)),
      ),
    ),
  );
}

function wordsOf(page: Page | undefined): string {
  const marks = allMarks(page?.marks ?? []);
  return marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])).join(" ");
}

describe("findings beside the map", () => {
  test.each([2, 4, 9, 14, 20])("%i plantings: shown and counted ones are all", (count) => {
    const input = crowded(count, 4);
    const total = input.result.findings.length;
    const words = wordsOf(scenes(input, { ...a4, ratio: 500 })[0]);
    const shown = numberedWords(input).filter((each) => words.includes(each.words.title)).length;
    const more = Number(/And (\d+) more in the notes\./.exec(words)?.[1] ?? 0);
    // With a full list of plots beside the map they are only counted.
    if (words.includes(`Checks: ${countText(input.result.findings)}, in the notes.`)) return;
    expect(shown + more).toBe(total);
    expect(words.includes("All of them, in full, in the notes.")).toBe(more === 0);
  });

  test("a panel too small for them says how many there are", () => {
    const input = mapInput(gardenPlan());
    const settings = { ...a4, paper: "A5", ratio: 500 } as const;
    const words = wordsOf(scenes(input, settings)[0]);
    expect(words).toContain(`Checks: ${countText(input.result.findings)}, in the notes.`);
  });
});

describe("what the edge of the map cuts", () => {
  const hedged = (lengthM: number) =>
    mapInput(
      planOf(
        {
          surroundings: [
            {
              ...source("h", "Long hedge", rectangle(0, 6, 1, lengthM, 90)),
              what: "hedge" as const,
            },
          ],
        },
        [{ id: "b", code: "A01", outline: rectangle(0, 0, 1.2, 10) }],
        [],
      ),
    );

  test("is named on the sheet and in the notes", async () => {
    const { bytes, cut } = await print(hedged(300), a4);
    expect(cut).toEqual(["Long hedge"]);
    const pages = textOf(bytes).split("\f");
    for (const page of pages.slice(0, 2)) {
      expect(page.replace(/\s+/g, " ")).toContain("Cut by the edge of the map: Long hedge.");
    }
  });

  test("is not spoken of when all is on it", async () => {
    const { bytes, cut } = await print(hedged(20), a4);
    expect(cut).toEqual([]);
    expect(textOf(bytes)).not.toContain("Cut by the edge");
  });

  test("what only just fits is on it whole", () => {
    const { drawing } = pageFrame("A4", "landscape");
    const { plan, layout } = hedged((drawing.width * 200) / 1000 - 1);
    const sheets = planSheets(plan, layout, { paper: "A4", orientation: "landscape" }, 200);
    expect(cutNames(mapContent(hedged(1)).items, sheets)).toEqual([]);
    expect(cutNames(mapContent({ ...hedged(1), plan, layout }).items, sheets)).toEqual([]);
  });
});

describe("the small map of all sheets", () => {
  const input = mapInput(gardenPlan());
  const settings = { ...a4, ratio: 50 };
  const sheets = planSheets(
    input.plan,
    input.layout,
    { paper: "A4", orientation: "landscape" },
    50,
  );
  const pages = scenes(input, settings);
  const isShade = (mark: { readonly kind: string }): mark is AreaMark =>
    mark.kind === "area" && (mark as AreaMark).fill === 0.82;

  test("shades the cell with the sheet's own number, on every sheet", async () => {
    expect(sheets.columns).toBeGreaterThan(1);
    expect(sheets.rows).toBeGreaterThan(1);
    const { bytes } = await print(input, settings);
    for (const [index, sheet] of sheets.sheets.entries()) {
      const page = pages[index];
      const [shade] = (page?.marks ?? []).filter(isShade);
      const [from, , to] = shade?.rings[0] ?? [];
      if (!from || !to) throw new Error("nothing is shaded");
      const numbers = (page?.marks ?? []).flatMap((mark) =>
        mark.kind === "text" &&
        /^\d+$/.test(mark.text) &&
        mark.at.x > from.x &&
        mark.at.x < to.x &&
        mark.at.y > from.y &&
        mark.at.y < to.y
          ? [mark.text]
          : [],
      );
      expect(numbers).toEqual([String(sheet.number)]);
      expect(wordsOf(page)).toContain(`Shaded: this sheet, ${sheet.number}.`);
      // As printed: grey just inside the corner of the cell.
      const grey = rasterise(bytes, index + 1).at(
        Math.round((from.x + 0.5) * 10),
        Math.round((from.y + 0.5) * 10),
      );
      expect(grey).toBeGreaterThan(190);
      expect(grey).toBeLessThan(225);
    }
  });

  test("its cells end where the joins are drawn on the sheets", () => {
    const box = { left: 0, top: 0, width: 100, height: 50 };
    const groundWidth = sheets.whole.maxX - sheets.whole.minX;
    for (let column = 1; column < sheets.columns; column += 1) {
      const [a, b] = [column - 1, column].map((each) =>
        sheets.sheets.find((sheet) => sheet.column === each),
      );
      const join = ((a?.window.maxX ?? 0) + (b?.window.minX ?? 0)) / 2 - sheets.whole.minX;
      const { left } = indexCell(sheets, 0, column, box);
      expect(left).toBeCloseTo((join / groundWidth) * 100, 6);
    }
    const last = indexCell(sheets, sheets.rows - 1, sheets.columns - 1, box);
    expect([last.left + last.width, last.top + last.height]).toEqual([100, 50]);
  });

  test("a cell too small for a number goes without, and the line below says which it is", () => {
    const row = Array.from({ length: 40 }, (_, index) => ({
      id: `b${index}`,
      code: `B${index}`,
      outline: rectangle(index * 9, 0, 1, 4),
    }));
    const many = mapInput(planOf({}, row, []));
    const made = scenes(many, { ...a4, ratio: 40 });
    const count = planSheets(many.plan, many.layout, { paper: "A4", orientation: "landscape" }, 40)
      .sheets.length;
    expect(count).toBeGreaterThan(30);
    for (const [index, page] of made.slice(0, count).entries()) {
      expect(wordsOf(page)).toContain(`Shaded: this sheet, ${index + 1}.`);
      expect(page.marks.filter(isShade)).toHaveLength(1);
    }
  });
});
