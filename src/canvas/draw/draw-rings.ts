/** Rings of required distance: dash-dot lines at the true offset of an outline. */
import type { Outline } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import type { Brush } from "./brush.ts";
import { type Box, BOX, drawPaper, drawWords, isFree, wordsWidth } from "./draw-text.ts";
import {
  type RingPiece,
  offsetRing,
  part,
  pieceAt,
  pieceLength,
} from "../../core/geometry/offset-ring.ts";
import { toPx } from "../scene/viewport.ts";

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

/** Draws the ring and gives back the places on it where its words could stand, the highest first. */
export function drawRing(brush: Brush, ring: Ring): readonly Point[] {
  const { context, view } = brush;
  context.strokeStyle = ring.colour;
  context.lineWidth = ring.widthPx;
  context.setLineDash(DASH);
  let donePx = 0;
  const places: Point[] = [];
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
      places.push(middle);
    }
    donePx += lengthPx;
  }
  context.setLineDash([]);
  context.lineDashOffset = 0;
  return places.sort((a, b) => a.y - b.y);
}

/**
 * Writes a ring's words where nothing else stands; nowhere rather than over something.
 * @param isOffGround whether a box covers no ground that is drawn
 */
export function drawRingWords(
  brush: Brush,
  ring: Ring,
  places: readonly Point[],
  taken: readonly Box[],
  isOffGround: (box: Box) => boolean,
): Box | null {
  const width = wordsWidth(brush, "bold", ring.text) + 8;
  for (const { x, y } of places) {
    const box = { left: x - width / 2, top: y - 9, width, height: BOX.heightPx };
    if (!isFree(brush, box, taken) || !isOffGround(box)) continue;
    drawPaper(brush, box);
    const words = { text: ring.text, face: "bold", colour: ring.colour, hasHalo: true } as const;
    drawWords(brush, { x, y }, words);
    return box;
  }
  return null;
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
