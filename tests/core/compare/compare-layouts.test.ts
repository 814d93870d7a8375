/** Layouts measured against figures worked out by hand, and differences against known edits. */
import { joinGroundReckoning } from "../../../src/core/checks/ground-checks.ts";
import { groundReckoning } from "../../../src/core/ground/ground-reckoning.ts";
import * as fc from "fast-check";
import Papa from "papaparse";
import { describe, expect, test } from "vitest";
import {
  type MeasureName,
  baseLayout,
  compareLayouts,
} from "../../../src/core/compare/compare-layouts.ts";
import { changeWords } from "../../../src/core/compare/compare-words.ts";
import { layoutDifferences } from "../../../src/core/compare/layout-differences.ts";
import { copyLayout } from "../../../src/core/edits/layout-edits.ts";
import { moveObjects } from "../../../src/core/edits/move-objects.ts";
import { changePlantings, removeObjects } from "../../../src/core/edits/object-edits.ts";
import { checkLayouts } from "../../../src/core/checks/checked-layout.ts";
import { compareCsv, compareReportText } from "../../../src/core/compare/compare-report.ts";
import type { Layout, Plan } from "../../../src/core/model/plan.ts";
import {
  bed,
  day,
  firstLayout,
  gardenPlan,
  planting,
  square,
  variety,
} from "../../support/arrange-garden.ts";

joinGroundReckoning(groundReckoning);

/** Two tomatoes 3 m apart that need 10 m, and a copy of their layout. */
function twoLayouts(): Plan {
  const plan = gardenPlan(
    [
      variety("a", "tomato", { isolationM: 10, wantedPlants: 50 }),
      variety("b", "tomato", { isolationM: 10, wantedPlants: 30 }),
    ],
    [bed("b1", 0, 0, 4, 60)],
    [
      planting("p1", "a", { outline: square(0, 0, 1), bed: "b1" }),
      planting("p2", "b", { outline: square(0, 4, 1), bed: "b1" }),
    ],
  );
  return copyLayout("layout-1", "layout-2", "Layout 2").apply(plan);
}

function secondLayout(plan: Plan): Layout {
  const layout = plan.layouts[1];
  if (!layout) throw new Error("no second layout");
  return layout;
}

function row(plan: Plan, name: MeasureName) {
  const found = compareLayouts(checkLayouts(plan, plan.layouts)).measures.find(
    (entry) => entry.name === name,
  );
  if (!found) throw new Error(`no row ${name}`);
  return found;
}

describe("measures", () => {
  test("a copy measures the same and is marked nowhere", () => {
    const { measures } = compareLayouts(checkLayouts(twoLayouts(), twoLayouts().layouts));
    for (const { values, isBest } of measures) {
      expect(values[0]).toBe(values[1]);
      expect(isBest).toEqual([false, false]);
    }
  });

  test("the worst distance short is one of the conflicts counted, not of species that rarely cross", () => {
    const plan = gardenPlan(
      [variety("a", "runner-bean", {}), variety("b", "common-bean", {})],
      [bed("b1", 0, 0, 4, 60)],
      [
        planting("p1", "a", { outline: square(0, 0, 1), bed: "b1" }),
        planting("p2", "b", { outline: square(0, 4, 1), bed: "b1" }),
      ],
    );
    expect(row(plan, "conflicts").values).toEqual([0]);
    expect(row(plan, "cautions").values[0]).toBeGreaterThan(0);
    expect(row(plan, "worst shortfall").values).toEqual([0]);
  });

  test("a move apart clears the conflict and is counted in metres", () => {
    const plan = moveObjects("layout-2", ["p2"], 0, 8).apply(twoLayouts());
    expect(row(plan, "conflicts")).toMatchObject({ values: [1, 0], isBest: [false, true] });
    expect(row(plan, "worst shortfall").values[0]).toBeCloseTo(7, 9);
    expect(row(plan, "worst shortfall").values[1]).toBe(0);
    expect(row(plan, "moved").values).toEqual([0, 8]);
    expect(row(plan, "moved").isBest).toEqual([true, false]);
  });

  test("seed plantings on ground that grew something they cross with are counted", () => {
    const crop = { id: "e1", outline: square(0, 0, 1), kind: "tomato", year: 2026 };
    const moved = moveObjects("layout-2", ["p1"], 0, -8).apply(twoLayouts());
    const plan = { ...moved, earlierCrops: [crop] };
    expect(row(plan, "volunteers")).toMatchObject({ values: [1, 0], isBest: [false, true] });
    const nowhere = { ...crop, outline: square(90, 90, 1) };
    expect(row({ ...plan, earlierCrops: [nowhere] }, "volunteers").values).toEqual([0, 0]);
  });

  test("plants of one variety do not make up for another", () => {
    const plan = changePlantings("layout-2", ["p2"], { plants: 100 }, "").apply(twoLayouts());
    expect(row(plan, "plants missing").values).toEqual([10, 10]);
    const all = changePlantings("layout-2", ["p1"], { plants: 50 }, "").apply(plan);
    expect(row(all, "plants missing")).toMatchObject({ values: [10, 0], isBest: [false, true] });
  });

  test("a layout that leaves varieties out is told, however few its conflicts", () => {
    const plan = removeObjects("layout-2", ["p1"], "").apply(twoLayouts());
    expect(row(plan, "varieties missing")).toMatchObject({
      values: [0, 1],
      isBest: [true, false],
    });
  });

  test("what rests on time and on cover is told apart, with the days to spare", () => {
    const late = { first: day("2027-09-20"), last: day("2027-10-20") };
    const timed = changePlantings("layout-2", ["p2"], { bloom: late }, "").apply(twoLayouts());
    expect(row(timed, "on time alone").values).toEqual([0, 1]);
    // Nineteen days between 31 August and 20 September, less the seven wanted.
    expect(row(timed, "least slack")).toMatchObject({ values: [null, 12], isBest: [true, false] });
    const covered = changePlantings("layout-2", ["p1"], { cover: "cage" }, "").apply(twoLayouts());
    expect(row(covered, "covers").values).toEqual([0, 1]);
  });

  test("ground is measured, but no end of it is better", () => {
    const plan = removeObjects("layout-2", ["p2"]).apply(twoLayouts());
    expect(row(plan, "ground planted")).toMatchObject({ values: [2, 1], isBest: [false, false] });
  });
});

describe("differences", () => {
  test("a layout does not differ from itself", () => {
    const plan = twoLayouts();
    expect(layoutDifferences(firstLayout(plan), secondLayout(plan))).toEqual([]);
  });

  test("property: a move is found with its metres, and back again with the opposite", () => {
    const metres = fc.double({ min: -50, max: 50, noNaN: true });
    fc.assert(
      fc.property(metres, metres, (dx, dy) => {
        fc.pre(Math.hypot(dx, dy) > 0.01);
        const plan = moveObjects("layout-2", ["p1"], dx, dy).apply(twoLayouts());
        const there = layoutDifferences(firstLayout(plan), secondLayout(plan));
        const back = layoutDifferences(secondLayout(plan), firstLayout(plan));
        expect(there.map(({ id }) => id)).toEqual(["p1"]);
        const [out] = there[0]?.changes ?? [];
        const [home] = back[0]?.changes ?? [];
        if (out?.kind !== "moved" || home?.kind !== "moved") throw new Error("not moved");
        expect(out.metres).toBeCloseTo(Math.hypot(dx, dy), 9);
        expect(home.metres).toBeCloseTo(out.metres, 9);
        expect(Math.cos(((out.towardsDeg - home.towardsDeg) * Math.PI) / 180)).toBeCloseTo(-1, 9);
      }),
    );
  });

  test("what came, went, grew and changed its date is named", () => {
    const base = twoLayouts();
    const plan = [
      changePlantings("layout-2", ["p1"], { outline: square(0, 0, 2), bloom: undefined }, ""),
      removeObjects("layout-2", ["p2"]),
    ].reduce((next, edit) => edit.apply(next), base);
    const kinds = (from: Layout, to: Layout) =>
      layoutDifferences(from, to).map(({ id, changes }) => [id, changes.map(({ kind }) => kind)]);
    expect(kinds(firstLayout(plan), secondLayout(plan))).toEqual([
      ["p1", ["resized", "date"]],
      ["p2", ["removed"]],
    ]);
    expect(kinds(secondLayout(plan), firstLayout(plan))).toEqual([
      ["p1", ["resized", "date"]],
      ["p2", ["added"]],
    ]);
  });

  test.each([
    [{ cover: "cage" }, "under cover: cage"],
    [{ end: day("2027-07-20") }, "cleared on 20 Jul"],
    [{ flowering: "cut" }, "cut before bloom"],
    [{ rows: 3 }, "3 rows, was unknown"],
    [{ purpose: "food" }, "no longer for seed"],
    [{ isolationM: 40 }, "other isolation distance"],
    [{ level: "stock" }, "other level"],
    [{ keepApart: true }, "other keeping apart of lots"],
    [{ note: "wet corner" }, "other note"],
  ] as const)("a planting with %o differs in just that", (changes, words) => {
    const plan = changePlantings("layout-2", ["p1"], changes, "").apply(twoLayouts());
    const found = layoutDifferences(firstLayout(plan), secondLayout(plan));
    expect(found.map((each) => changeWords(each, plan))).toEqual([[words]]);
  });

  test("the same lot under another id is matched by its code", () => {
    const plan = twoLayouts();
    const other = secondLayout(plan);
    const renamed = {
      ...other,
      plantings: other.plantings.map((entry) => ({ ...entry, id: `other-${entry.id}` })),
    };
    expect(layoutDifferences(firstLayout(plan), renamed)).toEqual([]);
  });
});

describe("the written comparison", () => {
  test("stars the better one and says what moved", () => {
    const plan = moveObjects("layout-2", ["p2"], 0, 8).apply(twoLayouts());
    const text = compareReportText({ file: "x", plan, compared: checkLayouts(plan, plan.layouts) });
    expect(text).toMatch(/^Conflicts +1 +0 \*$/m);
    expect(text).toContain("P2 Variety b: moved 8 m north");
  });

  test("no cell of the file is a formula, and every row has as many cells", () => {
    const plan = twoLayouts();
    const layouts = plan.layouts.map((layout) => ({ ...layout, name: "=HYPERLINK(1)" }));
    const { data } = Papa.parse(compareCsv(compareLayouts(checkLayouts(plan, layouts))), {
      delimiter: ",",
    });
    expect(data.at(-1)).toEqual([""]);
    for (const cells of data.slice(0, -1)) {
      expect(cells).toHaveLength(5);
      for (const cell of cells) expect(cell).not.toMatch(/^[=+@]/);
    }
  });
});

test("how much would cross is measured at both ends where it is estimated, and left out elsewhere", () => {
  const plan = gardenPlan(
    [variety("a", "sweet-corn", {}), variety("b", "sweet-corn", {})],
    [bed("b1", 0, 0, 4, 200)],
    [
      planting("p1", "a", { outline: square(0, 0, 1), bed: "b1" }),
      planting("p2", "b", { outline: square(0, 4, 1), bed: "b1" }),
    ],
  );
  const both = moveObjects("layout-2", ["p2"], 0, 80).apply(
    copyLayout("layout-1", "layout-2", "Layout 2").apply(plan),
  );
  const crossed = compareLayouts(checkLayouts(both, both.layouts)).measures.filter(
    ({ unit }) => unit === "per thousand",
  );
  expect(crossed.map(({ name }) => name)).toEqual([
    "most crossed, upper",
    "most crossed, lower",
    "crossed in all, upper",
    "crossed in all, lower",
  ]);
  for (const { values, isBest } of crossed) {
    expect(values[1]).toBeGreaterThan(0);
    expect(values[0]).toBeGreaterThan(10 * (values[1] ?? 0));
    expect(isBest).toEqual([false, true]);
  }
  const tomatoes = compareLayouts(checkLayouts(twoLayouts(), twoLayouts().layouts));
  expect(tomatoes.measures.filter(({ unit }) => unit === "per thousand")).toEqual([]);
});

test("others are compared with the chosen layout, else with the first that has something on it", () => {
  const plan = twoLayouts();
  const empty = { ...firstLayout(plan), id: "empty", plantings: [] };
  const layouts = [empty, ...plan.layouts];
  expect(baseLayout({ ...plan, layouts }).id).toBe(plan.layouts[0]?.id);
  expect(baseLayout({ ...plan, layouts, chosenLayout: "empty" }).id).toBe("empty");
  expect(baseLayout({ ...plan, layouts: [empty] }).id).toBe("empty");
});
