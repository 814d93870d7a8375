/** Boxes that words may take, about what they name, the best first. Pixels. */
import { type Outline, outlineContains, shapeCentre } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import type { RectangleShape } from "../../core/model/plan.ts";
import { type LabelBox, labelBox } from "../../core/page/label-box.ts";
import type { SheetItem } from "../scene/sheet-items.ts";
import { type View, held, toPx, toSheet } from "../scene/viewport.ts";
import type { Box } from "./draw-text.ts";
import { axesOf, uprightAngle, widestCut } from "./label-place.ts";

/** What words are put on or beside: anything drawn that has ground. */
export type Placed = Pick<SheetItem, "shape" | "outline">;

export interface LabelSize {
  readonly width: number;
  readonly height: number;
}

/** Words may reach over the edges of their ground by this much in all. */
const OVERHANG_PX = 3;
const GAP_PX = 5;
/** A single plant is drawn this large, whatever the zoom. */
const POINT_PX = 9;
const DEGREES = 180 / Math.PI;

function boxAt(at: Point, { width, height }: LabelSize, angle: number): LabelBox {
  return labelBox(at, width, height, angle * DEGREES);
}

/** A place some pixels along a direction on the screen. */
function onward(from: Point, angle: number, byPx: number): Point {
  return { x: from.x + Math.cos(angle) * byPx, y: from.y + Math.sin(angle) * byPx };
}

/** A direction words run in on a rectangle, and the room along and across it. */
interface Way {
  readonly angle: number;
  readonly runPx: number;
  readonly acrossPx: number;
}

/** Across and along a rectangle, the flatter first. */
function waysOn(shape: RectangleShape, view: View): readonly [Way, Way] {
  const axes = axesOf(shape);
  const [runPx, acrossPx] = [shape.widthM * view.scale, shape.lengthM * view.scale];
  const across = { angle: uprightAngle(axes.width), runPx, acrossPx };
  const along = { angle: uprightAngle(axes.length), runPx: acrossPx, acrossPx: runPx };
  return Math.abs(across.angle) <= Math.abs(along.angle) ? [across, along] : [along, across];
}

/** How far from the middle words slide where something is in their way, as shares of the room. */
const SLIDES = [0, 0.35, -0.35, 0.7, -0.7, 1, -1] as const;
/** Heights at which an outline is cut for the widest ground in it, as shares. */
const CUTS = [0.5, 0.35, 0.65, 0.2, 0.8, 0.08, 0.92] as const;

/** Where words are put. */
export interface LabelSpot {
  readonly view: View;
  /** The part of the drawing that shows what is named. */
  readonly seen: Box;
  readonly size: LabelSize;
}

/**
 * On the ground itself: its middle first, then the middle of what is seen of it, then wherever
 * else they fit.
 * @param isInside asked for outlines that are no rectangles
 */
export function* insideBoxes(
  { shape, outline }: Placed,
  { view, seen, size }: LabelSpot,
  isInside: (label: LabelBox) => boolean,
): Generator<LabelBox> {
  if (shape.shape === "rectangle") {
    for (const way of waysOn(shape, view)) {
      if (way.runPx + OVERHANG_PX < size.width || way.acrossPx + OVERHANG_PX < size.height)
        continue;
      yield* slidBoxes(toPx(view, shapeCentre(shape)), way, size, middleOf(seen));
    }
    return;
  }
  if (shape.shape === "point") return;
  const cut = { width: size.width - OVERHANG_PX, height: size.height - OVERHANG_PX };
  const lowest = toSheet(view, { x: 0, y: seen.top + seen.height }).y;
  for (const share of CUTS) {
    const middle = widestCut(outline, lowest + (seen.height / view.scale) * share)?.middle;
    if (!middle) continue;
    const at = toPx(view, middle);
    for (const angle of [0, edgeAngle(outline, view, at)]) {
      if (isInside(boxAt(at, cut, angle))) yield boxAt(at, size, angle);
    }
  }
}

function middleOf({ left, top, width, height }: Box): Point {
  return { x: left + width / 2, y: top + height / 2 };
}

function* slidBoxes(
  centre: Point,
  { angle, runPx, acrossPx }: Way,
  size: LabelSize,
  toward: Point,
): Generator<LabelBox> {
  const along = Math.max(0, runPx - size.width) / 2;
  const across = Math.max(0, acrossPx - size.height) / 2;
  yield boxAt(centre, size, angle);
  const [dx, dy] = [toward.x - centre.x, toward.y - centre.y];
  const by = held(dx * Math.cos(angle) + dy * Math.sin(angle), -along, along);
  const down = held(dy * Math.cos(angle) - dx * Math.sin(angle), -across, across);
  yield boxAt(onward(onward(centre, angle, by), angle + Math.PI / 2, down), size, angle);
  for (const rowShare of across < 2 ? [0] : SLIDES) {
    const row = onward(centre, angle + Math.PI / 2, across * rowShare);
    for (const share of along < 2 ? [0] : SLIDES) {
      yield boxAt(onward(row, angle, along * share), size, angle);
    }
  }
}

/** Along ground too narrow for the words: over both its long edges. */
export function* overBoxes(
  { shape }: SheetItem,
  { view, seen, size }: LabelSpot,
): Generator<LabelBox> {
  if (shape.shape !== "rectangle") return;
  const [flat, steep] = waysOn(shape, view);
  const way = flat.runPx >= steep.runPx ? flat : steep;
  yield* slidBoxes(toPx(view, shape), way, size, middleOf(seen));
}

interface Edge {
  readonly from: Point;
  readonly to: Point;
  readonly runPx: number;
  /** Of words along it. */
  readonly angle: number;
}

/** The edges of the outer ring on the screen. */
function edgesOf({ rings: [ring = new Float64Array(2)] }: Outline, view: View): readonly Edge[] {
  const corner = (index: number) => {
    const x = ring[index % ring.length] as number;
    return toPx(view, { x, y: ring[(index + 1) % ring.length] as number });
  };
  return Array.from({ length: ring.length / 2 }, (_, index) => {
    const [from, to] = [corner(index * 2), corner(index * 2 + 2)];
    const angle = uprightAngle(Math.atan2(to.y - from.y, to.x - from.x));
    return { from, to, angle, runPx: Math.hypot(to.x - from.x, to.y - from.y) };
  });
}

/** The way the nearest edge runs. */
function edgeAngle(outline: Outline, view: View, at: Point): number {
  let nearest = Infinity;
  let angle = 0;
  for (const { from, to, angle: its, runPx } of edgesOf(outline, view)) {
    const share =
      ((at.x - from.x) * (to.x - from.x) + (at.y - from.y) * (to.y - from.y)) / runPx ** 2;
    const on = held(share, 0, 1);
    const [x, y] = [from.x + (to.x - from.x) * on, from.y + (to.y - from.y) * on];
    const away = Math.hypot(at.x - x, at.y - y);
    if (away >= nearest) continue;
    nearest = away;
    angle = its;
  }
  return angle;
}

/** Beside the ends of a bed: to the left of one that lies, over one that stands; then the far end. */
export function* endBoxes(item: SheetItem, spot: LabelSpot): Generator<LabelBox> {
  const { shape } = item;
  const { view, size } = spot;
  if (shape.shape !== "rectangle") {
    yield* besideBoxes(item, spot);
    return;
  }
  const axes = axesOf(shape);
  const isLong = shape.lengthM >= shape.widthM;
  const along = uprightAngle(isLong ? axes.length : axes.width);
  const across = uprightAngle(isLong ? axes.width : axes.length);
  const halfPx = (Math.max(shape.lengthM, shape.widthM) / 2) * view.scale;
  const centre = toPx(view, shapeCentre(shape));
  const isLying = Math.abs(along) <= Math.PI / 4;
  const outPx = halfPx + GAP_PX + (isLying ? size.width : size.height) / 2;
  // Words along a bed that lies, across one that stands: its higher end is then the first.
  const first = isLying || along > 0 ? -1 : 1;
  for (const end of [first, -first]) {
    yield boxAt(onward(centre, along, end * outPx), size, isLying ? along : across);
  }
  yield* besideBoxes(item, spot, halfPx);
}

/** Outside the edges of an area, along them; about a point, level. */
export function* besideBoxes(
  { shape, outline }: Placed,
  { view, seen, size }: LabelSpot,
  leastPx = 0,
): Generator<LabelBox> {
  if (shape.shape === "point") {
    const at = toPx(view, shape);
    const sideways = POINT_PX + GAP_PX + size.width / 2;
    const upward = POINT_PX + 2 + size.height / 2;
    for (const x of [-sideways, sideways]) yield boxAt({ x: at.x + x, y: at.y }, size, 0);
    for (const y of [-upward, upward]) yield boxAt({ x: at.x, y: at.y + y }, size, 0);
    return;
  }
  const edges = edgesOf(outline, view)
    .flatMap((edge) => seenPart(edge, seen))
    .filter(({ runPx }) => runPx >= leastPx)
    .sort((a, b) => worth(b) - worth(a));
  for (const { from, to, angle } of edges.slice(0, EDGES_MOST)) {
    const probe = toSheet(view, onward(between(from, to, 0.5), angle + Math.PI / 2, 2));
    const out = outlineContains(outline, probe.x, probe.y) ? -1 : 1;
    for (const share of [0.5, 0.25, 0.75, 0.1, 0.9]) {
      const on = between(from, to, share);
      yield boxAt(onward(on, angle + Math.PI / 2, out * (size.height / 2 + GAP_PX)), size, angle);
    }
  }
}

const EDGES_MOST = 6;

/** Words that run across the screen are read first; a little height decides between two alike. */
function worth({ from, to, angle, runPx }: Edge): number {
  return runPx * (0.25 + Math.cos(angle) * 0.75) - (from.y + to.y) * 0.05;
}

function between(from: Point, to: Point, share: number): Point {
  return { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
}

/** What of an edge is in a box, grown by a hair. */
function seenPart(edge: Edge, { left, top, width, height }: Box): readonly Edge[] {
  const { from, to } = edge;
  let [first, last] = [0, 1];
  const sides = [
    [to.x - from.x, from.x - left, width],
    [to.y - from.y, from.y - top, height],
  ] as const;
  for (const [run, start, most] of sides) {
    if (Math.abs(run) < 1e-9) {
      if (start < -1 || start > most + 1) return [];
      continue;
    }
    const cuts = [(-1 - start) / run, (most + 1 - start) / run].sort((a, b) => a - b);
    first = Math.max(first, cuts[0] ?? 0);
    last = Math.min(last, cuts[1] ?? 1);
  }
  if (first >= last) return [];
  const runPx = edge.runPx * (last - first);
  return [{ ...edge, from: between(from, to, first), to: between(from, to, last), runPx }];
}

const RING_STEP_PX = 9;
const TURNS = 24;

/** Level, around a place, the nearest first. */
export function* aroundBoxes(
  at: Point,
  size: LabelSize,
  reach: { readonly leastPx: number; readonly mostPx: number },
): Generator<LabelBox> {
  for (let away = reach.leastPx; away <= reach.mostPx; away += RING_STEP_PX) {
    for (let turn = 0; turn < TURNS; turn += 1) {
      // Upward first: a line from below is met where the eye starts.
      const angle = ((turn % 2 === 0 ? turn : -turn - 1) / TURNS) * Math.PI - Math.PI / 2;
      const stretched = { x: Math.cos(angle) * (away + size.width / 2), y: Math.sin(angle) * away };
      yield boxAt({ x: at.x + stretched.x, y: at.y + stretched.y }, size, 0);
    }
  }
}

/** The part of an upright box that is in another; null when none is. */
export function sharedBox(a: Box, b: Box): Box | null {
  const left = Math.max(a.left, b.left);
  const top = Math.max(a.top, b.top);
  const width = Math.min(a.left + a.width, b.left + b.width) - left;
  const height = Math.min(a.top + a.height, b.top + b.height) - top;
  return width > 0 && height > 0 ? { left, top, width, height } : null;
}
