/** Where the grower stands: a dot in the ring it is known to. */
import type { SheetPlace } from "../../store/window/sheet-place.ts";
import { toPx } from "../scene/viewport.ts";
import { type Brush, faded, fill, stroke, traceCircle } from "./brush.ts";

const DOT_PX = 6;

export function drawHere(brush: Brush, place: SheetPlace): void {
  const { colours, view } = brush;
  const at = toPx(view, place);
  traceCircle(brush, at, place.accuracyM * view.scale);
  faded(brush, 0.14, () => fill(brush, colours.held));
  stroke(brush, { colour: colours.held, widthPx: 1.5, dash: [3, 3] });
  traceCircle(brush, at, DOT_PX);
  fill(brush, colours.held);
  stroke(brush, { colour: colours.sheet, widthPx: 2 });
}
