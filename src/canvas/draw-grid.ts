/** The grid under everything: squares of a round real length, letters from the left, numbers from the top. */
import { columnLetters } from "../core/exports/map-grid.ts";
import { METRES_PER_FOOT, type LengthUnit } from "../core/model/length.ts";
import type { Point } from "../core/geometry/point.ts";
import { type Brush, stroke } from "./brush.ts";
import { drawWords } from "./draw-words.ts";
import { visibleBounds } from "./viewport.ts";

/** Round lengths of the squares, in the unit of the plan. */
const SPACINGS = [1, 5, 10, 50, 100, 500, 1000, 5000, 10_000] as const;
/** Squares are at least so wide; finer lines stop when they lie nearer than this. */
const LEAST_SQUARE_PX = 64;
const LEAST_FINE_PX = 15;

export interface SheetGrid {
  /** Side of a square, metres, and in the unit of the plan. */
  readonly spacingM: number;
  readonly spacing: number;
  /** Metres between the fine lines, or null when they would lie too near. */
  readonly fineM: number | null;
}

/** The grid at a scale in pixels to a metre. */
export function sheetGrid(scale: number, unit: LengthUnit): SheetGrid {
  const unitM = unit === "m" ? 1 : METRES_PER_FOOT;
  const spacing =
    SPACINGS.find((length) => length * unitM * scale >= LEAST_SQUARE_PX) ?? SPACINGS[8];
  const spacingM = spacing * unitM;
  const parts = [10, 5].find((count) => (spacingM * scale) / count >= LEAST_FINE_PX);
  return { spacingM, spacing, fineM: parts === undefined ? null : spacingM / parts };
}

/**
 * @param corner upper left of the drawn ground: there the letters and numbers begin
 */
export function drawGrid(brush: Brush, grid: SheetGrid, corner: Point): void {
  const { view, widthPx, heightPx, colours } = brush;
  const seen = visibleBounds(view, { widthPx, heightPx });
  if (grid.fineM !== null) {
    brush.context.globalAlpha = 0.28;
    drawLines(brush, grid.fineM, colours.hairline);
  }
  brush.context.globalAlpha = 0.75;
  drawLines(brush, grid.spacingM, colours.hairline);
  brush.context.globalAlpha = 1;
  const step = grid.spacingM;
  const stepPx = step * view.scale;
  const left = Math.floor(corner.x / step + 1e-9);
  const top = Math.ceil(corner.y / step - 1e-9);
  const words = { face: "small", colour: colours.inkSoft, hasHalo: true } as const;
  const lastColumn = Math.ceil(seen.maxX / step);
  for (
    let column = Math.max(left, Math.floor(seen.minX / step));
    column <= lastColumn;
    column += 1
  ) {
    const x = view.x + column * stepPx + stepPx / 2;
    if (x > 26) drawWords(brush, { x, y: 13 }, { ...words, text: columnLetters(column - left) });
  }
  const lastRow = Math.floor(seen.minY / step);
  for (let row = Math.min(top, Math.ceil(seen.maxY / step)); row > lastRow; row -= 1) {
    const y = view.y - row * stepPx + stepPx / 2;
    const text = String(top - row + 1);
    if (y > 26) drawWords(brush, { x: 6, y }, { ...words, text, align: "left" });
  }
}

function drawLines(brush: Brush, spacingM: number, colour: string): void {
  const { context, view, widthPx, heightPx, ratio } = brush;
  const step = spacingM * view.scale;
  const onPixel = (px: number) => (Math.round(px * ratio) + 0.5) / ratio;
  context.beginPath();
  for (let x = view.x - Math.floor(view.x / step) * step; x <= widthPx; x += step) {
    context.moveTo(onPixel(x), 0);
    context.lineTo(onPixel(x), heightPx);
  }
  for (let y = view.y - Math.floor(view.y / step) * step; y <= heightPx; y += step) {
    context.moveTo(0, onPixel(y));
    context.lineTo(widthPx, onPixel(y));
  }
  stroke(brush, { colour, widthPx: 1 / ratio });
}
