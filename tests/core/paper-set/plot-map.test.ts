import { describe, expect, test } from "vitest";
import { pageFrame } from "../../../src/core/page/page-frame.ts";
import { MAX_SHEETS, planSheets } from "../../../src/core/map/page-plan.ts";
import { orientations, paperNames, paperSize } from "../../../src/core/page/paper.ts";
import { PlotMapStopped, plotMapPdf } from "../../../src/core/paper-set/plot-map.ts";
import { allMarks, type TextMark } from "../../../src/core/page/scene.ts";
import {
  gardenPlan,
  mapInput,
  planOf,
  planting,
  rectangle,
  source,
  variety,
  day,
} from "../../support/paper-garden.ts";
import {
  a4,
  darkPlaces,
  darkShare,
  fonts,
  print,
  PX_PER_MM,
  rasterise,
  scenes,
  textOf,
} from "../../support/printed.ts";

const garden = mapInput(gardenPlan());

describe("a printed sheet measures true", () => {
  test.each(paperNames.flatMap((paper) => orientations.map((each) => [paper, each] as const)))(
    "%s %s: page and check bars",
    async (paper, orientation) => {
      const settings = { ...a4, paper, orientation, ratio: 1000 };
      const { bytes } = await print(garden, settings);
      const raster = rasterise(bytes, 1);
      const size = paperSize(paper, orientation);
      expect(Math.abs(raster.width - size.widthMm * PX_PER_MM)).toBeLessThanOrEqual(5);
      expect(Math.abs(raster.height - size.heightMm * PX_PER_MM)).toBeLessThanOrEqual(5);

      const { foot, sideBar, isFootInOneRow } = pageFrame(paper, orientation);
      const level = foot.top + (isFootInOneRow ? 0 : 12) + 5.4;
      const barLeft = isFootInOneRow ? foot.left + foot.width - 114.6 : foot.left + 1;
      // Just off the bar's own line, so that its two end ticks are met.
      for (const [row, expected] of [
        [level - 0.6, 1000],
        [level + 3.4, 1016],
      ] as const) {
        const [left = 0, right = 0] = darkPlaces(raster, "x", row, barLeft - 1, barLeft + 103);
        expect(Math.abs(right - left - expected)).toBeLessThanOrEqual(2);
      }
      for (const [column, expected] of [
        [2.8, 1000],
        [6.8, 1016],
      ] as const) {
        const x = sideBar.left + column;
        const [top = 0, bottom = 0] = darkPlaces(
          raster,
          "y",
          x,
          sideBar.top + 8.5,
          sideBar.top + 113,
        );
        expect(Math.abs(bottom - top - expected)).toBeLessThanOrEqual(2);
      }
    },
  );

  test("a bed of 10 m at 1:100 is 100 mm long", async () => {
    const bed = { id: "b", code: "A01", outline: rectangle(5, 3, 1.2, 10, 90) };
    const { bytes } = await print(mapInput(planOf({}, [bed], [])), { ...a4, ratio: 100 });
    const { drawing } = pageFrame("A4", "landscape");
    const middle = drawing.top + drawing.height / 2;
    const places = darkPlaces(
      rasterise(bytes, 1),
      "x",
      middle + 2.5,
      drawing.left + 1,
      drawing.left + drawing.width - 1,
    );
    expect(places).toHaveLength(2);
    expect(Math.abs((places[1] ?? 0) - (places[0] ?? 0) - 1000)).toBeLessThanOrEqual(2);
  });
});

describe("what stands on the sheets", () => {
  test.each([
    ["A4", "landscape"],
    ["Letter", "portrait"],
    ["A5", "landscape"],
  ] as const)("every code is read and seen on %s %s", async (paper, orientation) => {
    const settings = { ...a4, paper, orientation };
    const { bytes, unplacedLabels } = await print(garden, settings);
    expect(unplacedLabels).toEqual([]);
    const words = textOf(bytes);
    const pages = scenes(garden, settings);
    for (const { code } of garden.layout.plantings) {
      expect(words).toContain(code);
      const place = pages.findIndex((page) => labelOf(page.marks, code) !== undefined);
      const label = labelOf(pages[place]?.marks ?? [], code) as TextMark;
      const box = { left: label.at.x - 3, top: label.at.y - 2.2, width: 6, height: 2.6 };
      const share = darkShare(rasterise(bytes, place + 1), box);
      expect(share).toBeGreaterThan(0.08);
      expect(share).toBeLessThan(0.6);
    }
  });

  function labelOf(marks: Parameters<typeof allMarks>[0], code: string): TextMark | undefined {
    return allMarks(marks).find(
      (mark): mark is TextMark => mark.kind === "text" && mark.isBold && mark.text.startsWith(code),
    );
  }

  test("title, stamp, far pollen sources, numbered findings and the plot list", async () => {
    const { bytes } = await print(garden, a4);
    const words = textOf(bytes, "-layout");
    for (const wanted of [
      "Seed plots, Fallow End, season 2027",
      "Layout 1",
      "1:200 on A4",
      "printed 2027-03-02 09:40",
      "Check bars: measure before use",
      "100 mm",
      "4 in",
      "wild carrot, roadside",
      "Pollen sources beyond the map",
      "Hollins' beet field (beet)",
      "true bearing 61°",
      "About this map",
      "Plot list",
      "Silverleaf Tarn",
      "80 in 3 rows",
      "1.2 × 11 m",
      "set out 12 Apr",
      "cut before bloom",
    ]) {
      expect(words).toContain(wanted);
    }
    const conflicts = garden.result.findings.filter(({ severity }) => severity === "conflict");
    expect(words).toContain(`What the checks say: ${conflicts.length} conflict`);
    expect(words.match(/Conflict: /g)).toHaveLength(conflicts.length);
  });

  test("the key has every hatch and line drawn, and no other", () => {
    const [page] = scenes(garden, a4);
    const marks = page?.marks ?? [];
    const inside = marks.flatMap((mark) => (mark.kind === "group" ? allMarks(mark.marks) : []));
    const outside = marks.filter((mark) => mark.kind !== "group");
    const hatchesOf = (all: typeof inside) =>
      new Set(all.flatMap((mark) => (mark.kind === "area" && mark.hatch ? [mark.hatch.id] : [])));
    expect(hatchesOf(outside)).toEqual(hatchesOf(inside));
    expect(hatchesOf(inside).size).toBe(6);
    const keyWords = outside.flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
    for (const words of ["building", "for seed", "not for seed", "tomato", "beet, chard"]) {
      expect(keyWords).toContain(words);
    }
    // "West hedge" stands on the hedge itself.
    for (const words of ["water", "path", "site's edge", "hedge"])
      expect(keyWords).not.toContain(words);
  });

  test("north points where the sheet's bearing says", () => {
    const [page] = scenes(garden, a4);
    const letter = page?.marks.find(
      (mark): mark is TextMark => mark.kind === "text" && mark.text === "N",
    );
    const { header } = pageFrame("A4", "landscape");
    const centre = { x: header.left + header.width - 10, y: header.top + 9 };
    // The letter stands beyond the tip; its middle is half a capital above its baseline.
    const [right, up] = [(letter?.at.x ?? 0) - centre.x, centre.y - (letter?.at.y ?? 0) + 1.13];
    expect((Math.atan2(right, up) * 180) / Math.PI).toBeCloseTo(-24, 0);
  });

  test("names of other scripts are seen; characters without a shape are said to be missing", async () => {
    const names = ["Žluťoučký kůň", "Κόκκινη Ρίζα", "Зелёная Волна", "Thảo Nguyên", "紅豆", "🌱"];
    const plan = planOf(
      { varieties: names.map((name, index) => variety(`v${index}`, name, "lettuce")) },
      [],
      names.map((_, index) =>
        planting(`p${index}`, `C0${index + 1}`, `v${index}`, rectangle(5, index * 3, 2, 6, 90)),
      ),
    );
    const { bytes } = await print(mapInput(plan), { ...a4, ratio: 100 });
    const words = textOf(bytes);
    for (const name of names.slice(0, 4)) expect(words.normalize("NFC")).toContain(name);
    expect(words).toMatch(/no shape for some\s+characters[\s\S]*The\s+names\s+of:\s+C05,\s+C06/);
    const pages = scenes(mapInput(plan), { ...a4, ratio: 100 });
    const raster = rasterise(bytes, pages.length);
    for (const name of names) {
      const mark = pages
        .at(-1)
        ?.marks.find((each): each is TextMark => each.kind === "text" && each.text === name);
      if (!mark) throw new Error(`${name} is not in the plot list`);
      const box = { left: mark.at.x, top: mark.at.y - 3, width: 3, height: 3.4 };
      expect(darkShare(raster, box)).toBeGreaterThan(0.05);
    }
  });

  test("a season over New Year is printed with both years", async () => {
    const plan = planOf(
      { season: { name: "2026/27", first: day("2026-10-01"), last: day("2027-04-30") } },
      [],
      [],
    );
    const { bytes } = await print(mapInput(plan), a4);
    expect(textOf(bytes)).toContain("1 Oct 2026 to 30 Apr 2027");
  });

  test("an empty plan, and a plan in feet", async () => {
    const empty = await print(mapInput(planOf({}, [], [])), a4);
    expect(empty.pages).toBe(2);
    const feet = await print(mapInput({ ...gardenPlan(), units: "ft" }), { ...a4, ratio: 240 });
    expect(textOf(feet.bytes)).toContain("1 in = 20 ft (1:240) on A4");
  });
});

describe("a plan too large for one sheet", () => {
  const wide = { ...a4, ratio: 50 };

  test("is cut into sheets that overlap, each with index, bars and title", async () => {
    const sheets = planSheets(
      garden.plan,
      garden.layout,
      { paper: wide.paper, orientation: wide.orientation },
      wide.ratio,
    );
    expect(sheets.sheets.length).toBeGreaterThan(3);
    const first = sheets.sheets[0];
    const beside = sheets.sheets.find(
      (sheet) => sheet.row === first?.row && sheet.column === first.column + 1,
    );
    const overlapM = (first?.window.maxX ?? 0) - (beside?.window.minX ?? 0);
    expect(overlapM * (1000 / wide.ratio)).toBeCloseTo(15, 9);

    const { bytes, unplacedLabels } = await print(garden, wide);
    expect(unplacedLabels).toEqual([]);
    const pages = textOf(bytes).split("\f");
    for (const [index, sheet] of sheets.sheets.entries()) {
      const words = pages[index] ?? "";
      expect(words).toContain(`Sheet ${sheet.number} of ${sheets.rows * sheets.columns}`);
      expect(words).toContain("Check bars");
      expect(words).toContain("Sheets");
    }
  });

  test("is refused when it would take hundreds of sheets", async () => {
    await expect(print(garden, { ...a4, ratio: 2 })).rejects.toThrow(RangeError);
    const { rows, columns, sheets } = planSheets(
      garden.plan,
      garden.layout,
      { paper: "A4", orientation: "landscape" },
      2,
    );
    expect(rows * columns).toBeGreaterThan(MAX_SHEETS);
    expect(sheets).toEqual([]);
  });
});

describe("making the file", () => {
  test("the same input gives the same bytes", async () => {
    const [one, two] = [await print(garden, a4), await print(garden, a4)];
    expect(Buffer.compare(one.bytes, two.bytes)).toBe(0);
    const later = await print(garden, { ...a4, printedAt: "2027-03-03" });
    expect(Buffer.compare(one.bytes, later.bytes)).not.toBe(0);
  });

  test("progress counts to its total, and stopping stops", async () => {
    const steps: (readonly [number, number])[] = [];
    await plotMapPdf(garden, a4, fonts, (done, total) => void steps.push([done, total]));
    expect(steps.map(([done]) => done)).toEqual(steps.map((_, index) => index + 1));
    expect(steps.at(-1)).toEqual([steps.length, steps.length]);
    const signal = { aborted: false };
    const stopped = plotMapPdf(garden, a4, fonts, () => void (signal.aborted = true), signal);
    await expect(stopped).rejects.toThrow(PlotMapStopped);
  });

  test("200 plantings are all there", async () => {
    const kinds = ["tomato", "carrot", "beet", "common-bean", "lettuce"];
    const plan = planOf(
      {
        varieties: Array.from({ length: 40 }, (_, index) =>
          variety(`v${index}`, `Variety ${index + 1}`, kinds[index % kinds.length] ?? "", {
            isolationM: 3,
          }),
        ),
        surroundings: [
          source("s", "far carrots", { shape: "point", x: 900, y: 0 }, { kind: "carrot" }),
        ],
      },
      [],
      Array.from({ length: 200 }, (_, index) =>
        planting(
          `p${index}`,
          `F${index + 1}`,
          `v${index % 40}`,
          rectangle((index % 20) * 5, Math.floor(index / 20) * 8, 4, 6),
        ),
      ),
    );
    const input = mapInput(plan);
    const { bytes, unplacedLabels } = await print(input, { ...a4, ratio: 500 });
    expect(unplacedLabels).toEqual([]);
    const { sheets } = planSheets(
      input.plan,
      input.layout,
      { paper: "A4", orientation: "landscape" },
      500,
    );
    const pages = textOf(bytes).split("\f");
    const codesOn = (some: readonly string[]) => new Set(some.join("\n").match(/\bF\d+\b/g));
    expect(codesOn(pages.slice(0, sheets.length)).size).toBe(200);
    expect(codesOn(pages.slice(sheets.length)).size).toBe(200);
  });
});
