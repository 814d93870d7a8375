/** What the pointer may take hold of: neither locked nor left out of the sheet. */
import type { Point } from "../../core/geometry/point.ts";
import { shapeCorners } from "../../core/geometry/outline.ts";
import type { HideableKind } from "../../store/window/hideable-kinds.ts";
import type { SheetItem } from "./sheet-items.ts";
import { type View, toPx } from "./viewport.ts";

/** Half of the least size of anything to be hit, pixels. */
const SIGN_REACH_PX = 12;
/** The sign stands so far inside its corner. */
const INSET_PX = 9;

export function isLocked(item: SheetItem): boolean {
  switch (item.what) {
    case "bed":
      return item.bed.locked === true;
    case "planting":
      return item.planting.locked === true;
    case "surrounding":
      return item.surrounding.locked === true;
  }
}

/** Whether a kind that is left out of the sheet takes it along. */
export function isHidden(item: SheetItem, hidden: ReadonlySet<HideableKind>): boolean {
  if (item.what === "planting") return hidden.has("plantings");
  return item.what === "surrounding" && hidden.has("surroundings");
}

/** Whether clicks, drags and region selection take it. */
export function isTakeable(item: SheetItem, hidden: ReadonlySet<HideableKind>): boolean {
  return !isLocked(item) && !isHidden(item, hidden);
}

/** Where the lock sign of an object stands, pixels: inside its upper right corner. */
export function lockSignPlace({ shape }: Pick<SheetItem, "shape">, view: View): Point {
  const corners = shapeCorners(shape).map((corner) => toPx(view, corner));
  const [first = { x: 0, y: 0 }] = corners;
  if (shape.shape === "point") return { x: first.x + INSET_PX + 4, y: first.y - INSET_PX - 4 };
  const corner = corners.reduce((best, next) => (next.x - next.y > best.x - best.y ? next : best));
  const middle = {
    x: corners.reduce((sum, { x }) => sum + x, 0) / corners.length,
    y: corners.reduce((sum, { y }) => sum + y, 0) / corners.length,
  };
  const toMiddle = Math.hypot(middle.x - corner.x, middle.y - corner.y) || 1;
  const share = Math.min(1, (INSET_PX * Math.SQRT2) / toMiddle);
  return {
    x: corner.x + (middle.x - corner.x) * share,
    y: corner.y + (middle.y - corner.y) * share,
  };
}

/** The locked object whose sign is under the pointer: the way to select it on the sheet. */
export function lockSignAt(
  items: readonly SheetItem[],
  px: Point,
  view: View,
  hidden: ReadonlySet<HideableKind>,
): SheetItem | undefined {
  return items.findLast((item) => {
    if (!isLocked(item) || isHidden(item, hidden)) return false;
    const at = lockSignPlace(item, view);
    return Math.hypot(at.x - px.x, at.y - px.y) <= SIGN_REACH_PX;
  });
}
