/** The site's edge and what lies around the beds: pollen sources, hedges, buildings, water, paths. */
import type { Outline } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import type { BloomLook } from "./bloom-look.ts";
import { type Brush, faded, fill, stroke, traceCircle, traceLine, traceOutline } from "./brush.ts";
import { drawFence, drawSlope, drawTree } from "./draw-ground.ts";
import { CLOSED_ALPHA, hatchFill, lettered } from "./draw-plots.ts";
import { drawWords } from "./draw-text.ts";
import type { SheetLabel } from "./label-plan.ts";
import type { SurroundingItem } from "../scene/sheet-items.ts";
import { toPx } from "../scene/viewport.ts";

/** A single plant or stand is drawn so large, whatever the zoom. */
export const POINT_RADIUS_PX = 9;
const TICK_SPACING_PX = 7;
/** A hedge so much longer than wide is drawn as one ticked line. */
const HEDGE_LINE_RATIO = 4;

export function drawSiteOutline(brush: Brush, outline: Outline): void {
  traceOutline(brush, outline);
  stroke(brush, { colour: brush.colours.inkSoft, widthPx: 1.25, dash: [14, 4, 2, 4] });
}

export function drawSurrounding(brush: Brush, item: SurroundingItem, look: BloomLook): void {
  if (item.surrounding.what === "hedge" && item.shape.shape !== "point") {
    drawHedge(brush, item);
    return;
  }
  const draw = linework[item.surrounding.what];
  if (draw) {
    draw(brush, item);
    return;
  }
  trace(brush, item);
  paint(brush, item, look);
}

type Linework = (brush: Brush, item: SurroundingItem) => void;

/** What is drawn by lines of its own, not as an area. */
const linework: { readonly [What in SurroundingItem["surrounding"]["what"]]?: Linework } = {
  fence: drawFence,
  tree: drawTree,
  slope: drawSlope,
};

function trace(brush: Brush, item: SurroundingItem): void {
  if (item.shape.shape === "point") {
    traceCircle(brush, toPx(brush.view, item.shape), POINT_RADIUS_PX);
  } else traceOutline(brush, item.outline);
}

function paint(brush: Brush, item: SurroundingItem, look: BloomLook): void {
  const { colours, context } = brush;
  switch (item.surrounding.what) {
    case "pollen":
      faded(brush, look === "closed" ? CLOSED_ALPHA : 1, () => fill(brush, hatchFill(brush, item)));
      if (look === "open" || look === "perhaps") {
        stroke(brush, { colour: colours.ink, widthPx: 5 });
        stroke(brush, { colour: colours.sheet, widthPx: 2 });
      }
      stroke(brush, { colour: colours.ink, widthPx: 1.25, dash: [9, 3, 2, 3] });
      return;
    case "building":
      // The system's few colours have no tint: a filled box would be a black block.
      if (!colours.isForced) fill(brush, colours.hairline);
      stroke(brush, { colour: colours.ink, widthPx: 2 });
      return;
    case "water":
      context.save();
      context.clip("evenodd");
      drawRipples(brush, item.outline);
      context.restore();
      trace(brush, item);
      stroke(brush, { colour: colours.held, widthPx: 1 });
      return;
    case "path":
      fill(brush, colours.sheet);
      stroke(brush, { colour: colours.inkSoft, widthPx: 1, dash: [7, 4] });
      return;
    case "hedge":
      fill(brush, colours.sheet);
      stroke(brush, { colour: colours.clear, widthPx: 2.5 });
      return;
    case "fence":
    case "tree":
    case "slope":
    case "other":
      stroke(brush, { colour: colours.inkSoft, widthPx: 1, dash: [1.5, 3.5] });
      return;
  }
}

/** Level lines, nearer together towards no side: still water. */
function drawRipples(brush: Brush, outline: Outline): void {
  const { view, context, colours } = brush;
  const upper = toPx(view, { x: outline.bounds.minX, y: outline.bounds.maxY });
  const lower = toPx(view, { x: outline.bounds.maxX, y: outline.bounds.minY });
  context.beginPath();
  const top = Math.max(upper.y, -6);
  const bottom = Math.min(lower.y, brush.heightPx + 6);
  for (let y = top - ((top - view.y) % 6); y < bottom; y += 6) {
    context.moveTo(Math.max(upper.x, 0), y);
    context.lineTo(Math.min(lower.x, brush.widthPx), y);
  }
  context.globalAlpha *= 0.45;
  stroke(brush, { colour: colours.held, widthPx: 1 });
  context.globalAlpha /= 0.45;
}

/** A long narrow hedge is one line with ticks across; any other is its edge with ticks inward. */
function drawHedge(brush: Brush, { shape, outline }: SurroundingItem): void {
  const { colours, view } = brush;
  const isLine =
    shape.shape === "rectangle" &&
    Math.max(shape.lengthM / shape.widthM, shape.widthM / shape.lengthM) >= HEDGE_LINE_RATIO;
  const corners = cornersPx(brush, outline);
  if (isLine) {
    const isLong = shape.lengthM >= shape.widthM;
    const [near = ORIGIN, left = ORIGIN, far = ORIGIN, right = ORIGIN] = corners;
    const ends = isLong
      ? [middle(near, right), middle(left, far)]
      : [middle(near, left), middle(far, right)];
    const half = Math.max(4, (Math.min(shape.widthM, shape.lengthM) / 2) * view.scale);
    traceLine(brush, ends);
    stroke(brush, { colour: colours.clear, widthPx: 2 });
    drawTicks(brush, ends[0] ?? ORIGIN, ends[1] ?? ORIGIN, -half, half);
    return;
  }
  traceOutline(brush, outline);
  stroke(brush, { colour: colours.clear, widthPx: 2 });
  brush.context.save();
  traceOutline(brush, outline);
  brush.context.clip("evenodd");
  corners.forEach((corner, index) => {
    drawTicks(brush, corner, corners[(index + 1) % corners.length] ?? corner, -7, 7);
  });
  brush.context.restore();
}

const ORIGIN: Point = { x: 0, y: 0 };

function cornersPx({ view }: Brush, outline: Outline): readonly Point[] {
  const ring = outline.rings[0] ?? new Float64Array();
  return Array.from({ length: ring.length / 2 }, (_, index) =>
    toPx(view, { x: ring[index * 2] as number, y: ring[index * 2 + 1] as number }),
  );
}

function middle(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

/** Strokes across a line from one side to the other, only those near the drawing. */
function drawTicks(brush: Brush, from: Point, to: Point, sideA: number, sideB: number): void {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  // On a short end ticks would only cross those of its neighbours.
  if (length < TICK_SPACING_PX * 4) return;
  const along = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const { context, colours, widthPx, heightPx } = brush;
  context.beginPath();
  for (let run = TICK_SPACING_PX; run <= length - TICK_SPACING_PX; run += TICK_SPACING_PX) {
    const x = from.x + along.x * run;
    const y = from.y + along.y * run;
    if (x < -20 || y < -20 || x > widthPx + 20 || y > heightPx + 20) continue;
    context.moveTo(x - along.y * sideA, y + along.x * sideA);
    context.lineTo(x - along.y * sideB, y + along.x * sideB);
  }
  stroke(brush, { colour: colours.clear, widthPx: 1.25 });
}

/** What lies there, in words. */
export function drawSurroundingLabel(
  brush: Brush,
  { surrounding }: SurroundingItem,
  look: BloomLook,
  { label, set }: SheetLabel,
): void {
  const { colours } = brush;
  const isInk = surrounding.what === "pollen" && look !== "closed";
  const colour = isInk ? colours.ink : colours.inkSoft;
  lettered(brush, label, set.scale, () =>
    drawWords(
      brush,
      { x: 0, y: 0 },
      { text: surrounding.label, face: "note", colour, hasHalo: true },
    ),
  );
}
