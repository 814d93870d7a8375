/** Ratios, grid, sheets and hatches: the numbers behind the plot map. */
import { describe, expect, test } from "vitest";
import {
  groundMetres,
  longestRound,
  paperMm,
  ratioText,
  standardRatios,
} from "../../../src/core/page/drawing-ratio.ts";
import {
  hatchByGroup,
  hatchOfGroup,
  hatches,
  sharedHatchGroups,
} from "../../../src/core/page/hatch.ts";
import { HATCH_UNIT_MM, hatchMarks } from "../../../src/core/page/hatch-marks.ts";
import { cutNames } from "../../../src/core/map/beyond-map.ts";
import { mapContent } from "../../../src/core/map/map-items.ts";
import { columnLetters, gridReference, mapGrid } from "../../../src/core/map/map-grid.ts";
import { oneSheetRatio, planSheets, suggestRatio } from "../../../src/core/map/page-plan.ts";
import { pageFrame, PAGE_MARGIN_MM } from "../../../src/core/page/page-frame.ts";
import { orientations, paperNames, paperSize } from "../../../src/core/page/paper.ts";
import type { Box } from "../../../src/core/page/scene.ts";
import { clipLine } from "../../../src/core/page/sheet-view.ts";
import {
  book,
  day,
  gardenPlan,
  mapInput,
  planOf,
  planting,
  rectangle,
  source,
  variety,
} from "../../support/paper-garden.ts";

describe("ratios", () => {
  test("are written in the unit's way", () => {
    expect(ratioText(100, "m")).toBe("1:100");
    expect(ratioText(96, "ft")).toBe("1 in = 8 ft (1:96)");
    expect(ratioText(100, "ft")).toBe("1:100");
    expect(ratioText(62.5, "m")).toBe("1:62.5");
  });

  test("standard ones rise and are round in their unit", () => {
    for (const unit of ["m", "ft"] as const) {
      const ratios = standardRatios(unit);
      expect([...ratios].toSorted((a, b) => a - b)).toEqual(ratios);
    }
    expect(standardRatios("ft").every((ratio) => ratio % 12 === 0)).toBe(true);
  });

  test("paper and ground undo each other", () => {
    expect(paperMm(10, 100)).toBe(100);
    expect(groundMetres(paperMm(7.3, 250), 250)).toBeCloseTo(7.3, 12);
  });

  test.each([
    [60, 100, "m", 5],
    [50, 100, "m", 5],
    [49.9, 100, "m", 2],
    [60, 1000, "m", 50],
    [60, 20, "m", 1],
    [60, 96, "ft", 10],
    [60, 5, "m", 0.2],
  ] as const)("%d mm at 1:%d hold %s in rounds of %d", (most, ratio, unit, count) => {
    expect(longestRound(most, ratio, unit).count).toBe(count);
  });
});

describe("the grid", () => {
  test("letters are small, leave out i, l and o and go on after z", () => {
    expect([0, 7, 8, 10, 11, 12, 22, 23, 24].map(columnLetters)).toEqual([
      "a",
      "h",
      "j",
      "m",
      "n",
      "p",
      "z",
      "aa",
      "ab",
    ]);
  });

  test("squares run right and down from the top left", () => {
    const grid = mapGrid({ minX: 1, maxX: 30, minY: -4, maxY: 19 }, 100, "m");
    expect(grid).toMatchObject({ left: 0, top: 20, spacing: { metres: 5 } });
    expect(gridReference(grid, { x: 0.1, y: 19.9 })).toBe("a1");
    expect(gridReference(grid, { x: 12, y: 3 })).toBe("c4");
  });
});

describe("the page", () => {
  const isWithin = (box: Box, left: number, top: number, right: number, bottom: number) =>
    box.left >= left - 1e-9 &&
    box.top >= top - 1e-9 &&
    box.left + box.width <= right + 1e-9 &&
    box.top + box.height <= bottom + 1e-9;
  const overlap = (a: Box, b: Box) =>
    a.left < b.left + b.width - 1e-9 &&
    b.left < a.left + a.width - 1e-9 &&
    a.top < b.top + b.height - 1e-9 &&
    b.top < a.top + a.height - 1e-9;

  test.each(paperNames.flatMap((paper) => orientations.map((each) => [paper, each] as const)))(
    "%s %s keeps its margins, and nothing lies on anything else",
    (paper, orientation) => {
      const { widthMm, heightMm } = paperSize(paper, orientation);
      const frame = pageFrame(paper, orientation);
      const boxes = [frame.header, frame.drawing, frame.sideBar, frame.foot, ...frame.panel];
      const margin = PAGE_MARGIN_MM;
      for (const box of boxes) {
        expect(box.width).toBeGreaterThan(0);
        expect(box.height).toBeGreaterThan(0);
        expect(isWithin(box, margin, margin, widthMm - margin, heightMm - margin)).toBe(true);
      }
      boxes.forEach((box, index) => {
        for (const other of boxes.slice(index + 1)) expect(overlap(box, other)).toBe(false);
      });
      // The upright 4 in bar goes in, with its words above it.
      expect(frame.sideBar.height).toBeGreaterThanOrEqual(9 + 101.6 + 1.2);
    },
  );
});

describe("sheets", () => {
  const plan = gardenPlan();
  const [layout] = plan.layouts;
  if (!layout) throw new Error("no layout");

  test("at the suggested ratio the garden goes on one, and not at the next finer one", () => {
    const ratio = suggestRatio(plan, layout, "A4", "landscape");
    const ratios = standardRatios("m");
    const finer = ratios[ratios.indexOf(ratio) - 1] as number;
    const countAt = (each: number) => {
      const { rows, columns } = planSheets(
        plan,
        layout,
        { paper: "A4", orientation: "landscape" },
        each,
      );
      return rows * columns;
    };
    expect(countAt(ratio)).toBe(1);
    expect(countAt(finer)).toBeGreaterThan(1);
  });

  test("together hold all ground, each within the whole", () => {
    for (const ratio of [20, 50, 75, 125]) {
      const { sheets, whole } = planSheets(
        plan,
        layout,
        { paper: "A4", orientation: "landscape" },
        ratio,
      );
      for (const bed of layout.beds) {
        const { x, y } = bed.outline as { readonly x: number; readonly y: number };
        const isOn = sheets.some(
          ({ window }) => window.minX < x && x < window.maxX && window.minY < y && y < window.maxY,
        );
        expect(isOn).toBe(true);
      }
      for (const { window } of sheets) {
        expect(window.minX).toBeGreaterThanOrEqual(whole.minX - 1e-9);
        expect(window.maxX).toBeLessThanOrEqual(whole.maxX + 1e-9);
      }
    }
  });

  test("a field of many small plots is offered several sheets, on which codes can be read", () => {
    const field = planOf(
      { varieties: [variety("v", "Ash", "carrot")] },
      [],
      Array.from({ length: 100 }, (_, index) =>
        planting(
          `p${index}`,
          `P${index}`,
          "v",
          rectangle((index % 10) * 12, Math.floor(index / 10) * 9, 1.2, 4, 90),
        ),
      ),
    );
    const [only] = field.layouts;
    if (!only) throw new Error("no layout");
    const suggested = suggestRatio(field, only, "A4", "landscape");
    expect(suggested).toBeLessThan(oneSheetRatio(field, only, "A4", "landscape"));
    expect(paperMm(1.2, suggested)).toBeGreaterThanOrEqual(4);
  });

  test("a few small plots far apart are not spread over more than four sheets", () => {
    const field = planOf(
      { varieties: [variety("v", "Ash", "carrot")] },
      [],
      Array.from({ length: 20 }, (_, index) =>
        planting(
          `p${index}`,
          `P${index}`,
          "v",
          rectangle((index % 5) * 18, Math.floor(index / 5) * 17, 1.2, 0.5, 90),
        ),
      ),
    );
    const [only] = field.layouts;
    if (!only) throw new Error("no layout");
    const a4 = { paper: "A4", orientation: "landscape" } as const;
    const suggested = suggestRatio(field, only, "A4", "landscape");
    // Their codes would go in at 1:50 and less: more than four sheets of A4.
    expect(planSheets(field, only, a4, 50).sheets.length).toBeGreaterThan(4);
    expect(planSheets(field, only, a4, suggested).sheets.length).toBeLessThanOrEqual(4);
    expect(suggested).toBeLessThan(oneSheetRatio(field, only, "A4", "landscape"));
  });

  test("where there is room, surroundings near by are taken in; far ones are not", () => {
    const near = {
      ...plan,
      surroundings: [source("s", "oak", { shape: "point", x: 34, y: 8 }, { what: "other" })],
    };
    const at = (some: typeof plan) =>
      planSheets(some, layout, { paper: "A4", orientation: "landscape" }, 200).whole;
    expect(at(near).maxX).toBeGreaterThan(34);
    const far = {
      ...plan,
      surroundings: [source("s", "oak", { shape: "point", x: 900, y: 8 }, { what: "other" })],
    };
    expect(at(far)).toEqual(at({ ...plan, surroundings: [] }));
  });

  test("empty sheets are left out and keep their numbers", () => {
    const corners = planOf(
      {},
      [
        { id: "a", code: "A", outline: rectangle(0, 0, 2, 2) },
        { id: "b", code: "B", outline: rectangle(60, 40, 2, 2) },
      ],
      [],
    );
    const [only] = corners.layouts;
    if (!only) throw new Error("no layout");
    const { rows, columns, sheets } = planSheets(
      corners,
      only,
      { paper: "A4", orientation: "landscape" },
      100,
    );
    expect(rows * columns).toBeGreaterThan(4);
    expect(sheets.map(({ number }) => number)).toEqual([columns, (rows - 1) * columns + 1]);
  });

  test("a neighbour's field alone takes no sheet, what is the grower's own does", () => {
    const beds = [
      { id: "a", code: "A", outline: rectangle(0, 0, 2, 2) },
      { id: "b", code: "B", outline: rectangle(60, 40, 2, 2) },
    ];
    const middle = rectangle(30, 20, 4, 4);
    const field = source("s", "Field", rectangle(30, 20, 40, 30), { kind: "pumpkin" });
    const corners = {
      shape: "polygon" as const,
      corners: [
        [-10, -10],
        [70, -10],
        [70, 50],
        [-10, 50],
      ] as [number, number][],
    };
    const within = (some: Partial<typeof plan>) => {
      const whole = planOf({ ...some, site: { ...plan.site, outline: corners } }, beds, []);
      const [only] = whole.layouts;
      if (!only) throw new Error("no layout");
      const a4 = { paper: "A4", orientation: "landscape" } as const;
      return { whole, set: planSheets(whole, only, a4, 100) };
    };
    const theirs = within({ surroundings: [{ ...field, reach: "ask" }] });
    expect(theirs.set.sheets).toHaveLength(2);
    expect(cutNames(mapContent(mapInput(theirs.whole)).items, theirs.set)).toContain("Field");
    const mark = { id: "m", outline: middle, disease: "white-rot", seenOn: day("2025-07-08") };
    for (const own of [
      { surroundings: [{ ...field, reach: "ours" as const }] },
      { surroundings: [source("h", "Shed", middle, { what: "building" })] },
      { groundMarks: [mark] },
    ]) {
      expect(within(own).set.sheets.length).toBeGreaterThan(2);
    }
  });
});

describe("hatches on paper", () => {
  const box: Box = { left: 10, top: 20, width: 12, height: 8 };

  test.each(hatches.map((hatch) => [hatch.id, hatch] as const))(
    "%s covers its box evenly",
    (_, hatch) => {
      const marks = hatchMarks(hatch, box);
      const wanted = [
        ...hatch.lines.map(
          ({ spacing }) => (box.width + box.height) / (spacing * HATCH_UNIT_MM) / 1.5,
        ),
        ...(hatch.marks
          ? [(box.width * box.height) / (hatch.marks.spacing * HATCH_UNIT_MM) ** 2]
          : []),
      ];
      expect(marks.length).toBeGreaterThanOrEqual(Math.floor(Math.min(...wanted) * 0.8));
      // Never level or upright: those read as rows.
      for (const { angleDeg } of hatch.lines) expect(angleDeg % 90).not.toBe(0);
    },
  );

  test("is anchored to the page: two boxes side by side share their lines", () => {
    const [hatch] = hatches;
    if (!hatch) throw new Error("no hatch");
    const key = (mark: ReturnType<typeof hatchMarks>[number]) =>
      mark.kind === "line" && mark.points[0] && mark.points[1]
        ? Math.round(
            (1e6 *
              (mark.points[0].x * (mark.points[1].y - mark.points[0].y) -
                mark.points[0].y * (mark.points[1].x - mark.points[0].x))) /
              Math.hypot(mark.points[1].x - mark.points[0].x, mark.points[1].y - mark.points[0].y),
          )
        : 0;
    const left = new Set(hatchMarks(hatch, box).map(key));
    const right = hatchMarks(hatch, { ...box, left: 13 }).map(key);
    expect(right.filter((line) => left.has(line)).length).toBeGreaterThan(right.length / 2);
  });

  test("each crossing group has its own, whatever else the plan holds", () => {
    const groups = hatchByGroup(gardenPlan(), (kind) => book.kind(kind)?.group);
    expect([...groups.keys()]).toEqual(["tomato", "beet", "carrot", "bean", "lettuce", "onion"]);
    expect(new Set(groups.values()).size).toBe(6);
    const onion = planOf({ varieties: [variety("v", "Quarry White", "onion")] }, [], []);
    const alone = hatchByGroup(onion, (kind) => book.kind(kind)?.group);
    expect(alone.get("onion")).toBe(groups.get("onion"));
  });

  test("those of a common kitchen garden are unlike, and every group of the crop base has one", () => {
    const common =
      "tomato bean carrot beet lettuce onion squash brassica pea maize pepper cucumber leek radish";
    const own = common.split(" ").map((group) => hatchOfGroup(group).id);
    expect(new Set(own).size).toBe(own.length);
    const known = new Set(hatches.map(({ id }) => id));
    const groups = [...new Set(book.kinds.map(({ group }) => group))];
    expect(groups.length).toBeGreaterThan(40);
    for (const group of groups) expect(known).toContain(hatchOfGroup(group).id);
    expect(hatchOfGroup("my-own-herb")).toBe(hatchOfGroup("my-own-herb"));
  });

  test("groups of a plan that share a hatch are known, for words to tell them apart", () => {
    const byGroup = new Map(
      ["tomato", "asparagus", "bean"].map((group) => [group, hatchOfGroup(group)]),
    );
    expect([...sharedHatchGroups(byGroup)]).toEqual(["tomato", "asparagus"]);
  });
});

test("a line is cut to a box", () => {
  const box: Box = { left: 0, top: 0, width: 10, height: 10 };
  expect(clipLine({ x: -5, y: 5 }, { x: 5, y: 5 }, box)).toEqual([
    { x: 0, y: 5 },
    { x: 5, y: 5 },
  ]);
  expect(clipLine({ x: -5, y: -5 }, { x: 15, y: 15 }, box)).toEqual([
    { x: 0, y: 0 },
    { x: 10, y: 10 },
  ]);
  expect(clipLine({ x: -5, y: 1 }, { x: -1, y: 9 }, box)).toBeNull();
  expect(clipLine({ x: 11, y: 1 }, { x: 11, y: 9 }, box)).toBeNull();
});
