/** Boxes on the screen that words keep clear of. */
import type { Brush } from "./brush.ts";
import type { Box } from "./draw-words.ts";
import type { SheetItem, SheetItems } from "../scene/sheet-items.ts";
import { toPx, visibleBounds } from "../scene/viewport.ts";

export function boxAround({ view }: Brush, { outline: { bounds } }: SheetItem): Box {
  const upper = toPx(view, { x: bounds.minX, y: bounds.maxY });
  const lower = toPx(view, { x: bounds.maxX, y: bounds.minY });
  return { left: upper.x, top: upper.y, width: lower.x - upper.x, height: lower.y - upper.y };
}

/** Surroundings wider than this share of the drawing are ground to write on, not things to avoid. */
const WIDE_SHARE = 0.5;

/** Around every bed, planting and smaller surrounding in view. */
export function groundBoxes(brush: Brush, items: SheetItems): readonly Box[] {
  return items.within(visibleBounds(brush.view, brush)).flatMap((item) => {
    const box = boxAround(brush, item);
    const isWide = item.what === "surrounding" && box.width > brush.widthPx * WIDE_SHARE;
    return isWide ? [] : [box];
  });
}
