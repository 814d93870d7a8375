/** Words on the sheet: every code of a planting stands somewhere, and no two words on each other. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type LabelsWanted, planLabels } from "../../../src/canvas/draw/label-plan.ts";
import { contentBounds } from "../../../src/canvas/scene/content-bounds.ts";
import { type SheetItem, sheetItems } from "../../../src/canvas/scene/sheet-items.ts";
import { type Size, fittedView, toPx } from "../../../src/canvas/scene/viewport.ts";
import { outlineContains } from "../../../src/core/geometry/outline.ts";
import type { Layout, Plan, Shape } from "../../../src/core/model/plan.ts";
import { readPlan } from "../../../src/core/model/read-plan.ts";
import { labelsMeet, lineMeetsLabel, ringsContain } from "../../../src/core/page/label-box.ts";
import {
  bedOf,
  book,
  drawnPlan,
  plantingOf,
  rectangle,
  sourceAt,
} from "../../support/drawn-plan.ts";

const DESKTOP: Size = { widthPx: 840, heightPx: 500 };
const PHONE: Size = { widthPx: 390, heightPx: 560 };
const INSET = { left: 40, top: 34, right: 40, bottom: 58 };

/** Widths near those of the faces that are drawn with. */
function wordsPx(item: SheetItem): number {
  if (item.what === "surrounding") return item.surrounding.label.length * 6.8;
  return (item.what === "bed" ? item.bed.code : item.planting.code).length * 7.3;
}

function planned(plan: Plan, layout: Layout, size: Size, more: Partial<LabelsWanted> = {}) {
  const view = fittedView(contentBounds(plan, layout), size, INSET);
  const items = sheetItems(plan, layout, book);
  const wanted = { items: items.list, wordsPx, ...more };
  return { view, items, labels: planLabels(view, size, wanted) };
}

/** No two words on each other, none out of the window, no line through any. */
function expectTidy({ labels }: ReturnType<typeof planned>, { widthPx, heightPx }: Size): void {
  const list = [...labels.values()];
  list.forEach(({ id, label, leader }, index) => {
    for (const { x, y } of label.corners) {
      expect(x >= 0 && y >= 0 && x <= widthPx && y <= heightPx, `${id} in the window`).toBe(true);
    }
    for (const other of list.slice(index + 1)) {
      expect(labelsMeet(label, other.label), `${id} on ${other.id}`).toBe(false);
    }
    if (leader === null) return;
    for (const other of list) {
      // Two plantings that have the same small ground in turn: the line comes out from under a code.
      const isOver = ringsContain([other.label.corners], leader[0]);
      if (other.id === id || isOver) continue;
      expect(lineMeetsLabel(...leader, other.label), `line of ${id} through ${other.id}`).toBe(
        false,
      );
    }
  });
}

function sample(name: string): { readonly plan: Plan; readonly layout: Layout } {
  const text = readFileSync(new URL(`../../../sample-plots/${name}.json`, import.meta.url), "utf8");
  const read = readPlan(text, name, (kind) => book.kind(kind) !== undefined);
  if (!read.ok) throw new Error(name);
  const [layout] = read.value.layouts;
  return { plan: read.value, layout: layout as Layout };
}

/** Fourteen beds side by side, two plantings in most: twenty-five codes and fourteen bed codes. */
function crowded(): { readonly plan: Plan; readonly layout: Layout } {
  const beds = Array.from({ length: 14 }, (_, index) =>
    bedOf(`${"abcdefghijklmn"[index]}01`, rectangle(2 + index * 1.8, 6, 1.2, 9)),
  );
  const plantings = Array.from({ length: 25 }, (_, index) => {
    const bed = beds[index % 14] as (typeof beds)[number];
    const half = index < 14 ? 0 : 1;
    const outline = rectangle(2 + (index % 14) * 1.8, half === 0 ? 4 : 8.2, 1.1, 3.5);
    return plantingOf(`${bed.id}-${half + 1}`, outline, { bed: bed.id });
  });
  return drawnPlan({ beds, plantings });
}

const arc = (radius: number) =>
  Array.from({ length: 12 }, (_, index) => {
    const angle = (Math.PI / 22) * index;
    return [10 + radius * Math.cos(angle), 3 + radius * Math.sin(angle)] as const;
  });

/** A curved bed with a planting all along it, an L and a ring. */
function odd(): { readonly plan: Plan; readonly layout: Layout } {
  const curve: Shape = { shape: "polygon", corners: [...arc(7), ...arc(5.8).toReversed()] };
  const ell: Shape = {
    shape: "polygon",
    corners: [
      [0, 0],
      [7, 0],
      [7, 1.2],
      [1.2, 1.2],
      [1.2, 6],
      [0, 6],
    ],
  };
  const beds = [bedOf("c01", curve), bedOf("l01", ell)];
  const plantings = [
    plantingOf("c01-1", curve, { bed: "c01" }),
    plantingOf("l01-1", ell, { bed: "l01" }),
  ];
  return drawnPlan({ beds, plantings });
}

const PLANS = {
  "a crowded garden": crowded,
  "odd beds": odd,
  ...Object.fromEntries(
    ["garden-to-solve", "garden-solved", "lane-field", "two-acre-field", "walled-garden"].map(
      (name) => [name, () => sample(name)],
    ),
  ),
};

describe.each(Object.entries(PLANS))("%s at Fit all", (_, make) => {
  test.each([
    ["on a desktop", DESKTOP],
    ["on a phone", PHONE],
  ])("%s has every planting's code once and no words on others", (_where, size) => {
    const { plan, layout } = make();
    const drawn = planned(plan, layout, size);
    const missing = layout.plantings.filter(({ id }) => !drawn.labels.has(id));
    expect(layout.plantings.length).toBeGreaterThan(0);
    expect(missing.map(({ code }) => code)).toEqual([]);
    expectTidy(drawn, size);
  });
});

test("a crowded garden has every bed's code as well, all at full size on a desktop", () => {
  const { plan, layout } = crowded();
  const { labels } = planned(plan, layout, DESKTOP);
  expect(labels.size).toBe(39);
  expect([...labels.values()].every(({ set }) => set.scale === 1)).toBe(true);
});

test("a planting half out of the window has its code on the half that is seen", () => {
  const { plan, layout } = drawnPlan({
    plantings: [plantingOf("p-1", rectangle(0, 0, 2, 20, 90))],
  });
  const items = sheetItems(plan, layout, book);
  const view = { scale: 40, x: -100, y: 100 };
  const { list } = items;
  const label = planLabels(view, DESKTOP, { items: list, wordsPx }).get("p-1");
  expect(label?.label.bounds.left).toBeGreaterThan(0);
  expect(label?.leader).toBeNull();
});

test("a code too large for its ground is led to by a line from it, off other plantings", () => {
  const plots = Array.from({ length: 9 }, (_, index) =>
    plantingOf(`quarter-${index}`, rectangle(index * 0.5, 0, 0.4, 0.4)),
  );
  const { plan, layout } = drawnPlan({ plantings: plots });
  const items = sheetItems(plan, layout, book);
  const view = { scale: 40, x: 300, y: 250 };
  const { list } = items;
  const labels = planLabels(view, DESKTOP, { items: list, wordsPx });
  expect(labels.size).toBe(9);
  const led = [...labels.values()].filter(({ leader }) => leader !== null);
  expect(led.length).toBeGreaterThan(4);
  for (const { id, leader, label } of led) {
    const from = leader?.[0] ?? { x: NaN, y: NaN };
    const outline = items.byId.get(id)?.outline;
    const place = { x: (from.x - view.x) / view.scale, y: (view.y - from.y) / view.scale };
    expect(outline && outlineContains(outline, place.x, place.y)).toBe(true);
    for (const other of list) {
      const { minX, maxX, minY, maxY } = other.outline.bounds;
      const upper = toPx(view, { x: minX, y: maxY });
      const lower = toPx(view, { x: maxX, y: minY });
      const { left, top, width, height } = label.bounds;
      const isBeside = left >= lower.x || left + width <= upper.x;
      expect(other.id === id || isBeside || top >= lower.y || top + height <= upper.y).toBe(true);
    }
  }
});

/** A square of so many small plots, four metres apart each way. */
function field(side: number) {
  const plots = Array.from({ length: side * side }, (_, place) =>
    plantingOf(`plot-${place}`, rectangle((place % side) * 4, Math.floor(place / side) * 4, 1, 2)),
  );
  return drawnPlan({ plantings: plots });
}

test("hundreds of plots too small on the screen for letters have no codes, nor lines to a few of them", () => {
  const { plan, layout } = field(20);
  const far = planned(plan, layout, DESKTOP);
  expect(2 * far.view.scale).toBeLessThan(12);
  expect(far.labels.size).toBe(0);
  // Nearer to, those in view have theirs.
  const view = { scale: 30, x: 20, y: 480 };
  const seen = far.items.within({ minX: 0, minY: 0, maxX: 24, maxY: 14 });
  const near = planLabels(view, DESKTOP, { items: seen, wordsPx });
  expect(near.size).toBeGreaterThan(20);
  expect(near.size).toBe(seen.length);
});

test("of a hundred plots that small, some are led to by lines", () => {
  const { plan, layout } = field(10);
  const view = { scale: 5, x: 300, y: 350 };
  const { list } = sheetItems(plan, layout, book);
  const labels = planLabels(view, DESKTOP, { items: list, wordsPx });
  expect([...labels.values()].filter(({ leader }) => leader !== null).length).toBeGreaterThan(5);
});

test("a name keeps inside the window, once, and off beds' codes", () => {
  const path = { ...sourceAt("path", 0, 0), label: "The long path", what: "path" as const };
  const { plan, layout } = drawnPlan({
    beds: [bedOf("b1", rectangle(0, 3, 1.2, 6, 90))],
    surroundings: [{ ...path, outline: rectangle(0, 0, 2, 400, 90) }],
  });
  const { list } = sheetItems(plan, layout, book);
  const view = { scale: 30, x: 2000, y: 250 };
  const label = planLabels(view, DESKTOP, { items: list, wordsPx }).get("path");
  expect(label?.label.bounds.left).toBeGreaterThan(0);
  expect((label?.label.bounds.left ?? 0) + (label?.label.bounds.width ?? 0)).toBeLessThan(840);
});
