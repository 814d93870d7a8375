/** Rings of required distance: dash-dot lines at the true offset of an outline. */
import type { Outline } from "../core/geometry/outline.ts";
import type { Point } from "../core/geometry/point.ts";
import type { Brush } from "./brush.ts";
import { drawWords } from "./draw-words.ts";
import { type RingPiece, offsetRing, part, pieceAt, pieceLength } from "./offset-ring.ts";
import { toPx } from "./viewport.ts";

export interface Ring {
  readonly outline: Outline;
  readonly radiusM: number;
  readonly colour: string;
  readonly widthPx: number;
  /** Written on the ring. */
  readonly text: string;
}

const DASH = [14, 4, 2, 4];
/** Pieces are drawn in runs of about so many pixels; runs outside the drawing are left out. */
const RUN_PX = 240;

export function drawRing(brush: Brush, ring: Ring): void {
  const { context, view } = brush;
  context.strokeStyle = ring.colour;
  context.lineWidth = ring.widthPx;
  context.setLineDash(DASH);
  let donePx = 0;
  let label: Point | null = null;
  for (const piece of offsetRing(ring.outline, ring.radiusM)) {
    const lengthPx = pieceLength(piece) * view.scale;
    const runs = Math.max(1, Math.ceil(lengthPx / RUN_PX));
    for (let run = 0; run < runs; run += 1) {
      const shown = part(piece, run / runs, (run + 1) / runs);
      const middle = toPx(view, pieceAt(shown, 0.5));
      if (!isNear(brush, middle, lengthPx / runs)) continue;
      // Dashes go on where the run before left off.
      context.lineDashOffset = donePx + (lengthPx * run) / runs;
      trace(brush, shown);
      context.stroke();
      if (isInside(brush, middle) && (label === null || middle.y < label.y)) label = middle;
    }
    donePx += lengthPx;
  }
  context.setLineDash([]);
  context.lineDashOffset = 0;
  if (label) {
    drawWords(brush, label, {
      text: ring.text,
      face: "bold",
      colour: ring.colour,
      hasHalo: true,
    });
  }
}

function trace({ context, view }: Brush, piece: RingPiece): void {
  context.beginPath();
  if (piece.kind === "straight") {
    const from = toPx(view, piece.from);
    const to = toPx(view, piece.to);
    context.moveTo(from.x, from.y);
    context.lineTo(to.x, to.y);
    return;
  }
  const centre = toPx(view, piece.centre);
  const radius = piece.radiusM * view.scale;
  context.arc(centre.x, centre.y, radius, -piece.start, -piece.start - piece.sweep, true);
}

function isNear({ widthPx, heightPx }: Brush, { x, y }: Point, reach: number): boolean {
  return x > -reach && y > -reach && x < widthPx + reach && y < heightPx + reach;
}

function isInside({ widthPx, heightPx }: Brush, { x, y }: Point): boolean {
  return x > 60 && y > 30 && x < widthPx - 90 && y < heightPx - 60;
}
