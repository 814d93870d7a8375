/** What is selected: a heavy blue outline, and handles to pull. */
import { type Brush, fill, stroke, traceCircle, traceLine, traceOutline } from "./brush.ts";
import { POINT_RADIUS_PX } from "./draw-surroundings.ts";
import type { HandleSizes, PlacedHandle } from "../scene/handles.ts";
import type { SheetItem } from "../scene/sheet-items.ts";
import { toPx } from "../scene/viewport.ts";

export function traceItem(brush: Brush, { shape, outline }: SheetItem, growPx = 0): void {
  if (shape.shape === "point") {
    traceCircle(brush, toPx(brush.view, shape), POINT_RADIUS_PX + growPx);
  } else traceOutline(brush, outline);
}

export function drawSelected(brush: Brush, items: readonly SheetItem[]): void {
  for (const item of items) {
    traceItem(brush, item, 3);
    stroke(brush, { colour: brush.colours.held, widthPx: 3 });
  }
}

/** Where an object lay before it was picked up. */
export function drawOldPlace(brush: Brush, item: SheetItem, isTrial = false): void {
  traceItem(brush, item);
  stroke(
    brush,
    isTrial
      ? { colour: brush.colours.held, widthPx: 1.75, dash: [5, 4] }
      : { colour: brush.colours.inkSoft, widthPx: 1, dash: [2, 3] },
  );
}

/** Subjects of the opened finding. */
export function drawNamed(brush: Brush, items: readonly SheetItem[], colour: string): void {
  for (const item of items) {
    traceItem(brush, item, 6);
    stroke(brush, { colour, widthPx: 2.5, dash: [8, 4] });
  }
}

export function drawHandles(
  brush: Brush,
  handles: readonly PlacedHandle[],
  { halfPx }: HandleSizes,
): void {
  const { context, colours } = brush;
  for (const { handle, at } of handles) {
    if (handle.kind === "turn") {
      traceCircle(brush, at, halfPx + 1);
      fill(brush, colours.sheet);
      stroke(brush, { colour: colours.held, widthPx: 1.75 });
      // An open arc with a barb: this one turns.
      const radius = halfPx + 5;
      context.beginPath();
      context.arc(at.x, at.y, radius, -Math.PI * 0.85, -Math.PI * 0.15);
      stroke(brush, { colour: colours.held, widthPx: 1.25 });
      const tip = {
        x: at.x + radius * Math.cos(-0.15 * Math.PI),
        y: at.y - radius * Math.sin(0.15 * Math.PI),
      };
      traceLine(brush, [{ x: tip.x - 5, y: tip.y - 1 }, tip, { x: tip.x + 0.5, y: tip.y - 5.5 }]);
      stroke(brush, { colour: colours.held, widthPx: 1.25 });
      continue;
    }
    context.beginPath();
    if (handle.kind === "new-corner") context.arc(at.x, at.y, halfPx * 0.75, 0, Math.PI * 2);
    else context.rect(at.x - halfPx, at.y - halfPx, halfPx * 2, halfPx * 2);
    fill(brush, colours.sheet);
    const isLight = handle.kind === "new-corner";
    stroke(brush, { colour: colours.held, widthPx: isLight ? 1 : 1.75 });
  }
}
