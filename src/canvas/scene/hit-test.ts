/** What lies under the pointer, and what lies in a box. */
import type { Bounds } from "../../core/geometry/bounds.ts";
import { growBounds } from "../../core/geometry/bounds.ts";
import { gapBetween } from "../../core/geometry/gap.ts";
import { outlineContains, pointOutline } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import type { SheetItem, SheetItems } from "./sheet-items.ts";

const RANK: Readonly<Record<SheetItem["what"], number>> = { planting: 0, bed: 1, surrounding: 2 };

/**
 * Everything under a place, the topmost first: plantings over beds over surroundings, then what
 * lies within reach without holding the place (thin outlines, single plants).
 * @param targetM what is thinner than this is taken as if it were so thick, for a pointer to meet
 */
export function itemsAt(
  items: SheetItems,
  place: Point,
  reachM: number,
  targetM = 0,
): readonly SheetItem[] {
  const farthestM = Math.max(reachM, targetM / 2);
  const near = items.within(growBounds(pointOutline(place).bounds, farthestM)).toReversed();
  const byRank = (list: readonly SheetItem[]) =>
    [...list].sort((a, b) => RANK[a.what] - RANK[b.what]);
  const holding = near.filter((item) => outlineContains(item.outline, place.x, place.y));
  const within = (item: SheetItem, metres: number) =>
    gapBetween(pointOutline(place), item.outline).distanceM <= metres;
  const thickened = near.filter((item) => {
    const roomM = (targetM - thicknessM(item)) / 2;
    const isPlant = item.shape.shape === "point";
    return roomM > 0 && !isPlant && !holding.includes(item) && within(item, roomM);
  });
  const besideM = (item: SheetItem) => (item.shape.shape === "point" ? farthestM : reachM);
  const beside = near.filter(
    (item) => !holding.includes(item) && !thickened.includes(item) && within(item, besideM(item)),
  );
  // A single plant beside the pointer lies over the ground under it.
  const plants = beside.filter((item) => item.shape.shape === "point");
  const rest = beside.filter((item) => item.shape.shape !== "point");
  return [...plants, ...byRank([...holding, ...thickened]), ...byRank(rest)];
}

/** How thin an outline is, metres: the shorter side of a rectangle, else of its box. */
function thicknessM({ shape, outline: { bounds } }: SheetItem): number {
  return shape.shape === "rectangle"
    ? Math.min(shape.widthM, shape.lengthM)
    : Math.min(bounds.maxX - bounds.minX, bounds.maxY - bounds.minY);
}

/** What lies wholly inside a box. */
export function itemsInside(items: SheetItems, box: Bounds): readonly SheetItem[] {
  return items
    .within(box)
    .filter(
      ({ outline: { bounds } }) =>
        bounds.minX >= box.minX &&
        bounds.maxX <= box.maxX &&
        bounds.minY >= box.minY &&
        bounds.maxY <= box.maxY,
    );
}

export function boxBetween(a: Point, b: Point): Bounds {
  return {
    minX: Math.min(a.x, b.x),
    minY: Math.min(a.y, b.y),
    maxX: Math.max(a.x, b.x),
    maxY: Math.max(a.y, b.y),
  };
}

/**
 * The nearest place on an outline's edge, within reach of a place; null when there is none.
 * @param own id of an object whose edges do not count
 */
export function edgeNear(
  items: SheetItems,
  place: Point,
  reachM: number,
  own: string | null = null,
): { readonly at: Point; readonly item: SheetItem } | null {
  let best: { readonly at: Point; readonly item: SheetItem } | null = null;
  let bestM = reachM;
  for (const item of items.within(growBounds(pointOutline(place).bounds, reachM))) {
    if (item.id === own) continue;
    // Without an inside, a place on the ground is measured to the edge as well.
    const edge = { ...item.outline, hasInside: false };
    const gap = gapBetween(pointOutline(place), edge);
    if (gap.distanceM > bestM) continue;
    bestM = gap.distanceM;
    best = { at: gap.to, item };
  }
  return best;
}
