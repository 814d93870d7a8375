/** What the edge of the map cuts: surroundings and the site's edge are seldom wholly on it. */
import type { Bounds } from "../geometry/bounds.ts";
import { protrusion } from "../geometry/containment.ts";
import { gapBetween } from "../geometry/gap.ts";
import { type Outline, outlineOf } from "../geometry/outline.ts";
import type { MapItem } from "./map-items.ts";
import { sheetWords, styleWords } from "./map-words.ts";
import { type SheetPlan, leftOutSheets, meets } from "./page-plan.ts";

/**
 * Names of items that are on a sheet and go on beyond the map, or on ground of which no sheet is
 * printed; each once, in drawing order.
 */
export function cutNames(items: readonly MapItem[], plan: SheetPlan): readonly string[] {
  const unseen = unseenGround(plan);
  const cut = items.filter(({ what, outline }) => {
    const { bounds } = outline;
    if (!plan.sheets.some(({ window }) => meets(bounds, window))) return false;
    return (
      !isWithin(bounds, plan.whole) ||
      unseen.some((ground) => isOn(ground, outline, what === "site"))
    );
  });
  return [...new Set(cut.map(({ label, style }) => (label === "" ? styleWords[style] : label)))];
}

/** Of the sheets that are not printed, what no printed sheet shows: less the strips they share. */
function unseenGround(plan: SheetPlan): readonly Outline[] {
  return leftOutSheets(plan).flatMap(({ row, column, window }) => {
    const beside = (rows: number, columns: number) =>
      plan.sheets.find((each) => each.row === row + rows && each.column === column + columns)
        ?.window;
    const minX = beside(0, -1)?.maxX ?? window.minX;
    const maxX = beside(0, 1)?.minX ?? window.maxX;
    const minY = beside(1, 0)?.maxY ?? window.minY;
    const maxY = beside(-1, 0)?.minY ?? window.maxY;
    if (minX >= maxX || minY >= maxY) return [];
    return [
      outlineOf({
        shape: "rectangle",
        x: (minX + maxX) / 2,
        y: (minY + maxY) / 2,
        widthM: maxX - minX,
        lengthM: maxY - minY,
        turnDeg: 0,
      }),
    ];
  });
}

/** @param isEdge only the line round it counts: ground that lies wholly within is not cut */
function isOn(ground: Outline, outline: Outline, isEdge: boolean): boolean {
  if (gapBetween(ground, outline).distanceM > 0) return false;
  return !isEdge || protrusion(ground, outline).distanceM > 0;
}

function isWithin(inner: Bounds, outer: Bounds): boolean {
  return (
    inner.minX >= outer.minX &&
    inner.maxX <= outer.maxX &&
    inner.minY >= outer.minY &&
    inner.maxY <= outer.maxY
  );
}

/** The same in words; empty when nothing is cut. */
export function cutWords(names: readonly string[]): string {
  return names.length === 0 ? "" : sheetWords.cut(names.join(", "));
}
