/** What the edge of the map cuts: surroundings and the site's edge are seldom wholly on it. */
import type { Bounds } from "../geometry/bounds.ts";
import type { MapItem } from "./map-items.ts";
import { sheetWords, styleWords } from "./map-words.ts";
import { meets } from "./page-plan.ts";

/**
 * Names of items that are on the map and go on beyond it, each once, in drawing order.
 * @param whole ground covered by all sheets together, sheet metres
 */
export function cutNames(items: readonly MapItem[], whole: Bounds): readonly string[] {
  const cut = items.filter(
    ({ outline: { bounds } }) => meets(bounds, whole) && !isWithin(bounds, whole),
  );
  return [...new Set(cut.map(({ label, style }) => (label === "" ? styleWords[style] : label)))];
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
