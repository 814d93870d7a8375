/** Pollen sources out of sight: a mark at the edge of the drawing that points to each. */
import type { CropBook } from "../../core/kinds/crop-book.ts";
import { boundsGap } from "../../core/geometry/bounds.ts";
import { gapBetween } from "../../core/geometry/gap.ts";
import { shapeCentre, outlineOf } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import { formatDistance } from "../../core/model/length.ts";
import type { Layout, Plan, Surrounding } from "../../core/model/plan.ts";
import { type Brush, fill, stroke, traceLine } from "./brush.ts";
import { type Box, boxWidth, drawWords, isFree } from "./draw-words.ts";
import { held, toPx, visibleBounds } from "../scene/viewport.ts";

const INSET_PX = 30;
const MARKS_MOST = 8;

/**
 * Each says its label and how far it lies from the nearest bed, edge to edge, as near to its arrow as there is room.
 * @param ground boxes of what is drawn, which the words keep clear of
 */
export function drawFarMarks(
  brush: Brush,
  plan: Plan,
  layout: Layout,
  book: CropBook,
  ground: () => readonly Box[],
): void {
  const { colours, view, widthPx, heightPx } = brush;
  const seen = visibleBounds(view, { widthPx, heightPx });
  const far = plan.surroundings
    .filter((entry) => entry.what === "pollen" && book.kind(entry.kind ?? "") !== undefined)
    .filter((entry) => boundsGap(outlineOf(entry.outline).bounds, seen) > 0)
    .map((entry) => ({ entry, at: toPx(view, shapeCentre(entry.outline)) }));
  if (far.length === 0) return;
  const taken: Box[] = [
    ...ground(),
    { left: 0, top: heightPx - 62, width: 260, height: 62 },
    { left: widthPx - 110, top: heightPx - 60, width: 110, height: 60 },
    { left: widthPx - 70, top: 0, width: 70, height: 110 },
  ];
  for (const { entry, at } of far.slice(0, MARKS_MOST)) {
    const edge = edgePlace(brush, at);
    const away = distanceFromBeds(layout.beds, entry);
    const text =
      away === null
        ? entry.label
        : `${entry.label}, ${formatDistance(away, plan.units)} from the beds`;
    const width = boxWidth(brush, "note", text);
    drawArrow(brush, edge, Math.atan2(at.y - edge.y, at.x - edge.x));
    const box = boxBeside(brush, edge, width, taken);
    if (!box) continue;
    taken.push(box);
    drawWords(
      brush,
      { x: box.left + width / 2, y: box.top + 9 },
      { text, face: "note", colour: colours.inkSoft, hasHalo: true },
    );
  }
}

const measured = new WeakMap<Surrounding, { beds: Layout["beds"]; distanceM: number | null }>();

/** Shortest distance from a source to any bed, metres; measured once while both stay the same. */
function distanceFromBeds(beds: Layout["beds"], entry: Surrounding): number | null {
  const known = measured.get(entry);
  if (known?.beds === beds) return known.distanceM;
  const from = outlineOf(entry.outline);
  const distances = beds.map((bed) => gapBetween(from, outlineOf(bed.outline)).distanceM);
  const distanceM = distances.length === 0 ? null : Math.min(...distances);
  measured.set(entry, { beds, distanceM });
  return distanceM;
}

/** Where the line from the middle of the drawing to a place leaves it. */
function edgePlace({ widthPx, heightPx }: Brush, at: Point): Point {
  const middle = { x: widthPx / 2, y: heightPx / 2 };
  const dx = at.x - middle.x;
  const dy = at.y - middle.y;
  const share = Math.min(
    (widthPx / 2 - INSET_PX) / Math.max(Math.abs(dx), 1e-6),
    (heightPx / 2 - INSET_PX) / Math.max(Math.abs(dy), 1e-6),
  );
  return { x: middle.x + dx * share, y: middle.y + dy * share };
}

function drawArrow(brush: Brush, { x, y }: Point, angle: number): void {
  const corner = (turn: number, reach: number) => ({
    x: x + Math.cos(angle + turn) * reach,
    y: y + Math.sin(angle + turn) * reach,
  });
  traceLine(brush, [corner(0, 9), corner(2.5, 8), corner(-2.5, 8)]);
  brush.context.closePath();
  fill(brush, brush.colours.sheet);
  stroke(brush, { colour: brush.colours.inkSoft, widthPx: 1.25 });
}

/** How far along the edge from its arrow the words may stand, pixels, the nearest first. */
const ALONG_PX = [0, 20, -20, 40, -40, 60, -60];

/** Room for the words inward of the arrow; null when others stand there. */
function boxBeside(brush: Brush, edge: Point, width: number, taken: readonly Box[]): Box | null {
  const isLeft = edge.x < brush.widthPx / 2;
  const beside = isLeft ? edge.x + 14 : edge.x - 14 - width;
  const left = held(beside, 24, brush.widthPx - width - 4);
  for (const along of ALONG_PX) {
    const top = held(edge.y - 9 + along, 24, brush.heightPx - 22);
    const box = { left, top, width, height: 18 };
    if (isFree(brush, box, taken)) return box;
  }
  return null;
}
