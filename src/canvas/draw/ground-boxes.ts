/** Boxes on the screen that words keep clear of. */
import type { Bounds } from "../../core/geometry/bounds.ts";
import type { Brush } from "./brush.ts";
import { type LabelBox, isInRings, labelBox, meetsRings } from "../../core/page/label-box.ts";
import type { MayCover } from "./draw-far-marks.ts";
import { type Box, CLEAR_PX, isFree, overlaps } from "./draw-text.ts";
import { ringsInPixels } from "./label-room.ts";
import type { SheetItem, SheetItems } from "../scene/sheet-items.ts";
import { type View, toPx, toSheet } from "../scene/viewport.ts";

export function boxAround({ view }: Brush, { outline: { bounds } }: SheetItem): Box {
  const upper = toPx(view, { x: bounds.minX, y: bounds.maxY });
  const lower = toPx(view, { x: bounds.maxX, y: bounds.minY });
  return { left: upper.x, top: upper.y, width: lower.x - upper.x, height: lower.y - upper.y };
}

/** Surroundings wider than this share of the drawing are ground to write on, not things to avoid. */
const WIDE_SHARE = 0.5;

/**
 * Whether a box stands clear of every bed, planting and smaller surrounding. Asked of the index
 * about the box alone: of thousands in view a few words meet few.
 */
export function offGround(brush: Brush, items: SheetItems): (box: Box) => boolean {
  const { view, widthPx } = brush;
  return (box) => {
    const near = items.within(boundsAround(view, box, CLEAR_PX));
    return near.every((item) => {
      const around = boxAround(brush, item);
      const isWide = item.what === "surrounding" && around.width > widthPx * WIDE_SHARE;
      return isWide || !overlaps(box, around);
    });
  };
}

/** What a box on the screen covers of the sheet, with so many pixels around it. */
function boundsAround(view: View, { left, top, width, height }: Box, byPx: number): Bounds {
  const upper = toSheet(view, { x: left - byPx, y: top - byPx });
  const lower = toSheet(view, { x: left + width + byPx, y: top + height + byPx });
  return { minX: upper.x, minY: lower.y, maxX: lower.x, maxY: upper.y };
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
    const near = items.within(boundsAround(brush.view, box, 0));
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
