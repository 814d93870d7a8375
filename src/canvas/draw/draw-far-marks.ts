/** Pollen sources out of sight: a mark at the edge of the drawing that points to each. */
import type { CropBook } from "../../core/kinds/crop-book.ts";
import { boundsGap } from "../../core/geometry/bounds.ts";
import { gapBetween } from "../../core/geometry/gap.ts";
import { shapeCentre, outlineOf } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import { formatDistance } from "../../core/model/length.ts";
import type { Layout, Plan, Surrounding } from "../../core/model/plan.ts";
import { type Brush, fill, stroke, traceLine } from "./brush.ts";
import { type Box, boxWidth, drawPaper, drawWords, isFree } from "./draw-text.ts";
import { isCoarsePointer } from "../scene/handles.ts";
import { type Size, held, toPx, visibleBounds } from "../scene/viewport.ts";
import * as said from "../scene/mark-words.ts";

const INSET_PX = 30;
const MARKS_MOST = 8;

/** A mark with its words. */
export interface FarMark {
  /** Around both. */
  readonly box: Box;
  readonly text: string;
  readonly isLeft: boolean;
  /** Where the source lies, out of the drawing. */
  readonly source: Point;
}

/** What words may lie on where there is no room else. */
export type MayCover = "nothing" | "edges" | "ground";
type IsOpen = (box: Box, may: MayCover) => boolean;

/**
 * Mark and words of each stand together at the edge, as near to the way it lies as there is room;
 * the words say its label and how far it lies from the nearest bed, edge to edge.
 * @param isOpen whether nothing is drawn in a box but what may be covered
 */
export function farMarks(
  brush: Brush,
  plan: Plan,
  layout: Layout,
  book: CropBook,
  isOpen: IsOpen,
): readonly FarMark[] {
  const { view, widthPx, heightPx } = brush;
  const seen = visibleBounds(view, { widthPx, heightPx });
  const far = plan.surroundings
    .filter((entry) => entry.what === "pollen" && book.kind(entry.kind ?? "") !== undefined)
    .filter((entry) => boundsGap(outlineOf(entry.outline).bounds, seen) > 0);
  const taken: Box[] = [...furnitureBoxes(brush)];
  return far.slice(0, MARKS_MOST).map((entry) => {
    const away = distanceFromBeds(layout.beds, entry);
    const long =
      away === null ? [] : [said.fromTheBeds(entry.label, formatDistance(away, plan.units))];
    const source = toPx(view, shapeCentre(entry.outline));
    const mark = placeOfMark(
      brush,
      source,
      [...long, entry.label],
      (box, may) => isFree(brush, box, taken) && isOpen(box, may),
    );
    taken.push(mark.box);
    return mark;
  });
}

/** Figures of the grid, scale bar, zoom buttons and north arrow: at the edges of every drawing. */
export function furnitureBoxes({ widthPx, heightPx }: Size): readonly Box[] {
  const buttonsPx = isCoarsePointer() ? 160 : 116;
  return [
    { left: 0, top: heightPx - 62, width: 236, height: 62 },
    { left: widthPx - 110, top: heightPx - buttonsPx, width: 110, height: buttonsPx },
    { left: widthPx - 70, top: 0, width: 70, height: 110 },
    { left: 0, top: 0, width: 16, height: heightPx },
    { left: 0, top: 0, width: widthPx, height: 20 },
  ];
}

const MARK_HEIGHT_PX = 20;
/** Width of the mark and of the gap to its words. */
const ARROW_PX = 24;
/** From the edges of the drawing: the figures of the grid stand there. */
const EDGE_PX = { side: 18, top: 26, bottom: 6 } as const;
/** How far along the edge from the way to the source mark and words may stand, nearest first. */
const ALONG_STEP_PX = 22;
const ROW_PX = 22;
const NEAR_STEPS = [0, 1, -1, 2, -2, 3, -3, 4, -4];
const FAR_STEPS = [5, -5, 6, -6, 7, -7, 8, -8, 10, -10, 12, -12, 14, -14];
const REACHES = [
  { steps: NEAR_STEPS, may: "nothing" },
  { steps: NEAR_STEPS, may: "edges" },
  { steps: FAR_STEPS, may: "edges" },
  { steps: [...NEAR_STEPS, ...FAR_STEPS], may: "ground" },
] as const;

/** Room at the edge the source lies behind; the nearest place, over other things, when there is none. */
function placeOfMark(
  brush: Brush,
  source: Point,
  texts: readonly string[],
  isOpen: IsOpen,
): FarMark {
  const { widthPx, heightPx } = brush;
  const edge = edgePlace(brush, source);
  const isLeft = edge.x < widthPx / 2;
  const isUpright = edge.x <= INSET_PX + 1 || edge.x >= widthPx - INSET_PX - 1;
  const inward = edge.y < heightPx / 2 ? ROW_PX : -ROW_PX;
  const boxFor = (text: string, along: number, row = 0): Box => {
    const width = boxWidth(brush, "note", text) + ARROW_PX;
    const middle = isLeft ? edge.x + width / 2 - ARROW_PX / 2 : edge.x - width / 2 + ARROW_PX / 2;
    const x = isUpright ? middle : middle + along * 3;
    const y = isUpright ? edge.y + along : edge.y + inward * row;
    return {
      left: held(
        x - width / 2,
        EDGE_PX.side,
        Math.max(EDGE_PX.side, widthPx - width - EDGE_PX.side),
      ),
      top: held(y - MARK_HEIGHT_PX / 2, EDGE_PX.top, heightPx - MARK_HEIGHT_PX - EDGE_PX.bottom),
      width,
      height: MARK_HEIGHT_PX,
    };
  };
  // Along the side of the drawing there are places enough; above and below it rows as well.
  const rows = isUpright ? [0] : [0, 1, 2];
  for (const { steps, may } of REACHES) {
    const tried = texts.flatMap((text) =>
      rows.flatMap((row) => steps.map((step) => ({ text, row, along: step * ALONG_STEP_PX }))),
    );
    const found = tried.find(({ text, row, along }) => isOpen(boxFor(text, along, row), may));
    if (found) {
      const { text, along, row } = found;
      return { box: boxFor(text, along, row), text, isLeft, source };
    }
  }
  const text = texts.at(-1) ?? "";
  return { box: boxFor(text, 0), text, isLeft, source };
}

export function drawFarMark(brush: Brush, { box, text, isLeft, source }: FarMark): void {
  const y = box.top + box.height / 2;
  const half = ARROW_PX / 2;
  const mark = { x: isLeft ? box.left + half : box.left + box.width - half, y };
  drawArrow(brush, mark, Math.atan2(source.y - mark.y, source.x - mark.x));
  const words = { text, face: "note", colour: brush.colours.inkSoft, hasHalo: true } as const;
  const x = isLeft ? box.left + ARROW_PX : box.left + box.width - ARROW_PX;
  drawPaper(brush, {
    ...box,
    left: isLeft ? x - 2 : box.left,
    width: box.width - ARROW_PX + 2,
  });
  drawWords(brush, { x, y }, { ...words, align: isLeft ? "left" : "right" });
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
