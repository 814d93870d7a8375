/** What is on trial on the sheet: the way from where it lay, and a ring about what is small. */
import { shapeCentre } from "../../core/geometry/outline.ts";
import { type Brush, stroke, traceCircle, traceLine } from "../draw/brush.ts";
import { POINT_RADIUS_PX } from "../draw/draw-surroundings.ts";
import type { SheetItem } from "../scene/sheet-items.ts";
import { toPx } from "../scene/viewport.ts";

type Px = ReturnType<typeof toPx>;
const LEAST_WAY_PX = 40;
const SHORT_OF_PX = 24;
const BARB_PX = 5;

/** @param old where things lie in the plan that is kept @param held where they are tried */
export function drawTrial(
  brush: Brush,
  old: readonly SheetItem[],
  held: readonly SheetItem[],
): void {
  drawTrialRings(brush, held);
  for (const from of old) {
    const to = held.find(({ id }) => id === from.id);
    if (to) drawWay(brush, from, to);
  }
}

/** From where an object lay to where it is tried: a line with a barb, short of the code it carries. */
function drawWay(brush: Brush, from: SheetItem, to: SheetItem): void {
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

/** What is tried and no larger than this on the screen would be overlooked. */
const SMALL_PX = 44;
const RING_PX = 12;
/** More rings than these would show nothing. */
const RINGS_MOST = 3;

/** A ring about each small thing that is on trial, where it would lie. */
function drawTrialRings(brush: Brush, items: readonly SheetItem[]): void {
  if (items.length > RINGS_MOST) return;
  const { view, colours } = brush;
  for (const { outline, shape } of items) {
    const { minX, maxX, minY, maxY } = outline.bounds;
    const [wide, high] = [(maxX - minX) * view.scale, (maxY - minY) * view.scale];
    if (Math.max(wide, high) > SMALL_PX) continue;
    const radius = Math.max(Math.hypot(wide, high) / 2, POINT_RADIUS_PX) + RING_PX;
    traceCircle(brush, toPx(view, shapeCentre(shape)), radius);
    stroke(brush, { colour: colours.sheet, widthPx: 6 });
    stroke(brush, { colour: colours.held, widthPx: 2.5 });
  }
}
