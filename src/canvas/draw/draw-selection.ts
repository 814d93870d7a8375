/** What is selected: a heavy blue outline, and handles to pull. */
import { type Brush, fill, stroke, traceCircle, traceLine, traceOutline } from "./brush.ts";
import { POINT_RADIUS_PX } from "./draw-surroundings.ts";
import type { HandleSizes, PlacedHandle } from "../scene/handles.ts";
import type { SheetItem } from "../scene/sheet-items.ts";
import { shapeCentre } from "../../core/geometry/outline.ts";
import { toPx } from "../scene/viewport.ts";

type Px = ReturnType<typeof toPx>;
const LEAST_WAY_PX = 40;
const SHORT_OF_PX = 24;
const BARB_PX = 5;

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

/** From where an object lay to where it is tried: a line with a barb, short of the code it carries. */
export function drawWay(brush: Brush, from: SheetItem, to: SheetItem): void {
  const [a, centre] = [from, to].map(({ shape }) => toPx(brush.view, shapeCentre(shape))) as [
    Px,
    Px,
  ];
  const length = Math.hypot(centre.x - a.x, centre.y - a.y);
  if (length < LEAST_WAY_PX) return;
  const [dx, dy] = [(centre.x - a.x) / length, (centre.y - a.y) / length];
  const b = { x: centre.x - SHORT_OF_PX * dx, y: centre.y - SHORT_OF_PX * dy };
  const barb = (side: number): Px => ({
    x: b.x - BARB_PX * (2 * dx + side * dy),
    y: b.y - BARB_PX * (2 * dy - side * dx),
  });
  traceLine(brush, [a, b, barb(1), b, barb(-1)]);
  stroke(brush, { colour: brush.colours.held, widthPx: 2 });
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
