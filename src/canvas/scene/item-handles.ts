/** The handles of a selected object as they stand on the sheet among its neighbours. */
import { type HandleSizes, type PlacedHandle, handlesOf } from "./handles.ts";
import { itemsAt } from "./hit-test.ts";
import { isLocked } from "./locks.ts";
import type { SheetItem, SheetItems } from "./sheet-items.ts";
import { type View, toSheet } from "./viewport.ts";

/** Room the arc over the turning handle takes, pixels. */
const AROUND_PX = 10;

/** None for what is locked; the turning handle stands where it covers no bed or planting of others. */
export function itemHandles(
  item: SheetItem,
  items: SheetItems,
  view: View,
  sizes: HandleSizes,
): readonly PlacedHandle[] {
  if (isLocked(item)) return [];
  return handlesOf(item.shape, view, sizes, (px) =>
    itemsAt(items, toSheet(view, px), (sizes.halfPx + AROUND_PX) / view.scale).every((other) =>
      isOwn(other, item),
    ),
  );
}

/** Itself, the bed it lies on and what lies on it; paths and other ground may be stood on. */
function isOwn(other: SheetItem, item: SheetItem): boolean {
  if (other.id === item.id) return true;
  if (other.what === "surrounding") return other.shape.shape !== "point";
  if (item.what === "planting") return other.id === item.planting.bed;
  return other.what === "planting" && other.planting.bed === item.id;
}
