/** Dimension lines: how far it is from here to there, ticked at both ends. */
import type { Point } from "../../core/geometry/point.ts";
import { type LengthUnit, formatLength } from "../../core/model/length.ts";
import { type Brush, stroke, traceLine } from "./brush.ts";
import { drawWords, wordsWidth } from "./draw-text.ts";
import { toPx } from "../scene/viewport.ts";

const TICK_PX = 5;

export interface Dimension {
  readonly from: Point;
  readonly to: Point;
  readonly colour: string;
}

/** The number stands on the line where there is room, else beside it. */
export function drawDimension(
  brush: Brush,
  { from, to, colour }: Dimension,
  unit: LengthUnit,
): void {
  const [a, b] = [toPx(brush.view, from), toPx(brush.view, to)];
  const run = Math.hypot(b.x - a.x, b.y - a.y);
  if (run < 2) return;
  const across = { x: (-(b.y - a.y) / run) * TICK_PX, y: ((b.x - a.x) / run) * TICK_PX };
  traceLine(brush, [a, b]);
  stroke(brush, { colour: brush.colours.sheet, widthPx: 3 });
  traceLine(brush, [a, b]);
  stroke(brush, { colour, widthPx: 1 });
  for (const end of [a, b]) {
    traceLine(brush, [
      { x: end.x - across.x, y: end.y - across.y },
      { x: end.x + across.x, y: end.y + across.y },
    ]);
    stroke(brush, { colour, widthPx: 1.25 });
  }
  const text = formatLength(Math.hypot(to.x - from.x, to.y - from.y), unit);
  const width = wordsWidth(brush, "plain", text);
  const isLevel = Math.abs(b.x - a.x) >= Math.abs(b.y - a.y);
  const hasRoom = isLevel ? run > width + 12 : run > 26;
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  const aside = isLevel ? { x: 0, y: -12 } : { x: width / 2 + 8, y: 0 };
  const at = hasRoom ? middle : { x: middle.x + aside.x, y: middle.y + aside.y };
  drawWords(brush, at, { text, face: "plain", colour, hasHalo: true });
}
