/** A single place that comes to rest on a corner or an edge of what is drawn. */
import { growBounds } from "../../core/geometry/bounds.ts";
import { pointOutline, shapeCorners } from "../../core/geometry/outline.ts";
import { type Point, pointDistance } from "../../core/geometry/point.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { edgeNear } from "../scene/hit-test.ts";
import { type SheetItem, type SheetItems, sheetItems } from "../scene/sheet-items.ts";
import { nameOf } from "../scene/item-name.ts";
import { SNAP_PX } from "./snap-targets.ts";
import { useView } from "../scene/view-store.ts";
import * as words from "./snap-words.ts";

interface SnappedPlace {
  readonly at: Point;
  /** What it came to, such as "corner of bed B01". */
  readonly label: string;
  readonly item: SheetItem;
}

/**
 * The nearest corner in reach, else the nearest edge; null on open ground.
 * @param own an object that is not snapped to: the place is one of its own
 */
export function snapPlace(
  items: SheetItems,
  place: Point,
  reachM: number,
  own: string | null = null,
): SnappedPlace | null {
  let best: SnappedPlace | null = null;
  let bestM = reachM;
  for (const item of items.within(growBounds(pointOutline(place).bounds, reachM))) {
    if (item.id === own) continue;
    for (const corner of shapeCorners(item.shape)) {
      const away = pointDistance(corner, place);
      if (away > bestM) continue;
      bestM = away;
      const name = nameOf(item);
      const label = item.shape.shape === "point" ? name : words.cornerOf(name);
      best = { at: corner, label, item };
    }
  }
  if (best) return best;
  const edge = edgeNear(items, place, reachM, own);
  return edge && { ...edge, label: words.edgeOf(nameOf(edge.item)) };
}

/** The same for the committed plan and the view as it is. */
export function snapToDrawn(
  place: Point,
  reachPx: number = SNAP_PX,
  own: string | null = null,
): SnappedPlace | null {
  const { plan, layoutId, book } = usePlanStore.getState();
  const items = sheetItems(plan, layoutOf(plan, layoutId), book);
  return snapPlace(items, place, reachPx / useView.getState().view.scale, own);
}
