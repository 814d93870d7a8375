/** The handles of a selected object as they stand on the sheet among its neighbours. */
import type { Point } from "../../core/geometry/point.ts";
import { type HandleSizes, type PlacedHandle, handlesOf } from "./handles.ts";
import { itemsAt } from "./hit-test.ts";
import { isLocked } from "./locks.ts";
import type { SheetItem, SheetItems } from "./sheet-items.ts";
import { type View, toPx, toSheet } from "./viewport.ts";

/** Room the arc over the turning handle takes, pixels. */
const AROUND_PX = 10;

/**
 * None for what is locked; the turning handle stands where it covers no bed or planting of others,
 * nor the code of its own bed.
 */
export function itemHandles(
  item: SheetItem,
  items: SheetItems,
  view: View,
  sizes: HandleSizes,
): readonly PlacedHandle[] {
  if (isLocked(item)) return [];
  return handlesOf(
    item.shape,
    view,
    sizes,
    (px) =>
      !isOverCode(item, view, px) &&
      itemsAt(items, toSheet(view, px), (sizes.halfPx + AROUND_PX) / view.scale).every((other) =>
        isOwn(other, item),
      ),
  );
}

/** Whether a place lies beyond the end of a bed where its code is: the left end, or the upper one. */
function isOverCode({ what, shape }: SheetItem, view: View, px: Point): boolean {
  if (what !== "bed" || shape.shape !== "rectangle") return false;
  const isLong = shape.lengthM >= shape.widthM;
  const angle = (shape.turnDeg * Math.PI) / 180 - (isLong ? Math.PI / 2 : 0);
  const along = { x: Math.cos(angle), y: Math.sin(angle) };
  const isStanding = Math.abs(along.y) > Math.abs(along.x) + 1e-9;
  const sign = (isStanding ? along.y : along.x) > 0 ? -1 : 1;
  const centre = toPx(view, shape);
  const out = (px.x - centre.x) * along.x + (px.y - centre.y) * along.y;
  return out * sign > (Math.max(shape.lengthM, shape.widthM) / 2) * view.scale;
}

/** Itself, the bed it lies on and what lies on it; paths and other ground may be stood on. */
function isOwn(other: SheetItem, item: SheetItem): boolean {
  if (other.id === item.id) return true;
  if (other.what === "surrounding") return other.shape.shape !== "point";
  if (item.what === "planting") return other.id === item.planting.bed;
  return other.what === "planting" && other.planting.bed === item.id;
}
