/** Boxes on the screen that words keep clear of. */
import type { Brush } from "./brush.ts";
import { type LabelBox, isInRings, labelBox, meetsRings } from "../../core/page/label-box.ts";
import type { MayCover } from "./draw-far-marks.ts";
import { type Box, isFree } from "./draw-text.ts";
import { ringsInPixels } from "./label-room.ts";
import type { SheetItem, SheetItems } from "../scene/sheet-items.ts";
import { toPx, toSheet, visibleBounds } from "../scene/viewport.ts";

export function boxAround({ view }: Brush, { outline: { bounds } }: SheetItem): Box {
  const upper = toPx(view, { x: bounds.minX, y: bounds.maxY });
  const lower = toPx(view, { x: bounds.maxX, y: bounds.minY });
  return { left: upper.x, top: upper.y, width: lower.x - upper.x, height: lower.y - upper.y };
}

/** Surroundings wider than this share of the drawing are ground to write on, not things to avoid. */
const WIDE_SHARE = 0.5;

let last: { readonly of: readonly unknown[]; readonly boxes: readonly Box[] } | null = null;

/** Around every bed, planting and smaller surrounding in view; the same for each frame of a drag. */
export function groundBoxes(brush: Brush, items: SheetItems): readonly Box[] {
  const { view, widthPx, heightPx } = brush;
  const of = [items, view, widthPx, heightPx];
  if (last && of.every((part, index) => part === last?.of[index])) return last.boxes;
  const boxes = items.within(visibleBounds(view, brush)).flatMap((item) => {
    const box = boxAround(brush, item);
    const isWide = item.what === "surrounding" && box.width > widthPx * WIDE_SHARE;
    return isWide ? [] : [box];
  });
  last = { of, boxes };
  return boxes;
}

/** Whether words in a box would lie on no other words, and on no ground or edge but what they may. */
export function isOpenGround(
  brush: Brush,
  items: SheetItems,
  words: readonly LabelBox[],
): (box: Box, may: MayCover) => boolean {
  const taken = words.map(({ bounds }) => bounds);
  return (box, may) => {
    if (!isFree(brush, box, taken)) return false;
    if (may === "ground") return true;
    const middle = { x: box.left + box.width / 2, y: box.top + box.height / 2 };
    const label = labelBox(middle, box.width, box.height, 0);
    const upper = toSheet(brush.view, { x: box.left, y: box.top });
    const lower = toSheet(brush.view, { x: box.left + box.width, y: box.top + box.height });
    const near = items.within({ minX: upper.x, minY: lower.y, maxX: lower.x, maxY: upper.y });
    return near.every((item) => {
      const { rings, box: around } = ringsInPixels(brush.view, item);
      if (!meetsRings(label, rings, around)) return true;
      // Wide ground is written on where its edge does not run through the words.
      if (item.what !== "surrounding") return false;
      const isPlain = item.surrounding.what === "path" || item.surrounding.what === "other";
      return isInRings(label, rings) || (may === "edges" && isPlain);
    });
  };
}
