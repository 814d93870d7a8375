/** The grid under everything: squares of a round real length, with distances from the origin. */
import { METRES_PER_FOOT, type LengthUnit } from "../../core/model/length.ts";
import { type Brush, stroke } from "./brush.ts";
import { drawWords } from "./draw-text.ts";
import { visibleBounds } from "../scene/viewport.ts";

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
 * The lines carry their distances from the sheet's origin, which are the x and y of every field:
 * they stay with the ground when the view moves, and are no codes.
 */
export function drawGrid(brush: Brush, grid: SheetGrid, unit: LengthUnit): void {
  const { view, widthPx, heightPx, colours } = brush;
  const seen = visibleBounds(view, { widthPx, heightPx });
  if (grid.fineM !== null) {
    brush.context.globalAlpha = 0.28;
    drawLines(brush, grid.fineM, colours.hairline);
  }
  brush.context.globalAlpha = 0.75;
  drawLines(brush, grid.spacingM, colours.hairline);
  brush.context.globalAlpha = 1;
  const words = { face: "small", colour: colours.inkSoft, hasHalo: true } as const;
  const stepPx = grid.spacingM * view.scale;
  for (const line of linesBetween(seen.minX, seen.maxX, grid.spacingM)) {
    const x = view.x + line * stepPx;
    const text = gridFigure(line, grid, unit);
    if (x > CORNER_PX && x < widthPx - 16) drawWords(brush, { x, y: 13 }, { ...words, text });
  }
  for (const line of linesBetween(seen.minY, seen.maxY, grid.spacingM)) {
    const y = view.y - line * stepPx;
    const text = gridFigure(line, grid, unit);
    if (y > CORNER_PX) drawWords(brush, { x: 6, y }, { ...words, text, align: "left" });
  }
}

/** Figures of the two edges keep out of each other's corner, pixels. */
const CORNER_PX = 30;

/** A line's distance from the origin; the line through it carries the unit. */
export function gridFigure(line: number, { spacing }: SheetGrid, unit: LengthUnit): string {
  return line === 0 ? `0 ${unit}` : String(line * spacing).replace("-", "\u2212");
}

function linesBetween(from: number, to: number, spacingM: number): readonly number[] {
  const first = Math.ceil(from / spacingM);
  const count = Math.max(0, Math.floor(to / spacingM) - first + 1);
  return Array.from({ length: count }, (_, index) => first + index);
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
