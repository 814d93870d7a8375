/** What an object snaps to: its bed, the edges and middles of neighbours, and gaps like theirs. */
import { type Bounds, growBounds } from "../../core/geometry/bounds.ts";
import { shapeCorners, outlineOf } from "../../core/geometry/outline.ts";
import type { Bed, Shape } from "../../core/model/plan.ts";
import type { SheetItem, SheetItems } from "../scene/sheet-items.ts";
import { equalGapLines } from "./snap-equal.ts";
import { type Frame, type SnapLine, type SnapLines, boundsInFrame, intoFrame } from "./snap.ts";
import { nameOf } from "../scene/item-name.ts";
import { bedNamed } from "../scene/tool-words.ts";
import * as words from "./snap-words.ts";

/** Snapping takes hold from so many pixels. */
export const SNAP_PX = 7;
/** Neighbours further away than this are not snapped to, metres. */
const NEIGHBOUR_M = 12;
/** Turns that differ by less count as the same, degrees. */
const TURN_TOLERANCE = 0.05;
/** How much an edge may lean out of the frame's directions, metres to a metre. */
const LEAN = Math.tan((TURN_TOLERANCE * Math.PI) / 180);

/** Whether a shape is a rectangle whose edges run along the frame's directions. */
function isAlongFrame(shape: Shape, frame: Frame): boolean {
  if (shape.shape !== "rectangle") return false;
  const off = Math.abs(shape.turnDeg - frame.turnDeg) % 90;
  return Math.min(off, 90 - off) < TURN_TOLERANCE;
}

/** Every edge that runs along one of the frame's directions. */
function edgeLines(shape: Shape, frame: Frame, name: string): SnapLines {
  const corners = shapeCorners(shape).map((corner) => intoFrame(frame, corner));
  const x: SnapLine[] = [];
  const y: SnapLine[] = [];
  const line = (at: number, a: number, b: number): SnapLine => ({
    at,
    reach: [Math.min(a, b), Math.max(a, b)],
    label: words.edgeOf(name),
    takes: "edge",
  });
  corners.forEach((from, index) => {
    const to = corners[(index + 1) % corners.length] ?? from;
    const [dx, dy] = [Math.abs(to.x - from.x), Math.abs(to.y - from.y)];
    if (dy > 0 && dx <= dy * LEAN) x.push(line((from.x + to.x) / 2, from.y, to.y));
    else if (dx > 0 && dy <= dx * LEAN) y.push(line((from.y + to.y) / 2, from.x, to.x));
  });
  return { x, y };
}

/** The middle lines of a rectangle that lies along the frame. */
function middleLines(shape: Shape, frame: Frame, name: string, isOwnBed: boolean): SnapLines {
  if (!isAlongFrame(shape, frame)) return { x: [], y: [] };
  const box = boundsInFrame(frame, shapeCorners(shape));
  const isTall = box.maxY - box.minY >= box.maxX - box.minX;
  const line = (a: number, b: number, reach: readonly [number, number]): SnapLine => ({
    at: (a + b) / 2,
    reach,
    label: words.middleOf(name),
    takes: "middle",
    isFavourite: isOwnBed,
  });
  // Plantings keep to the line along their bed; halfway down it is no place of its own.
  return {
    x: isOwnBed && !isTall ? [] : [line(box.minX, box.maxX, [box.minY, box.maxY])],
    y: isOwnBed && isTall ? [] : [line(box.minY, box.maxY, [box.minX, box.maxX])],
  };
}

function joinLines(all: readonly SnapLines[]): SnapLines {
  return { x: all.flatMap(({ x }) => x), y: all.flatMap(({ y }) => y) };
}

/** What a thing at rest gives others to snap to, in one frame. */
interface Resting {
  readonly edges: SnapLines;
  readonly middles: SnapLines;
  /** Its box, when it lies along the frame: gaps are counted between such. */
  readonly box: Bounds | null;
}

/** A drag asks sixty times a second about neighbours that rest: their lines are made once a frame. */
const known = new WeakMap<Frame, WeakMap<SheetItem | Bed, Resting>>();

/** Lines of a neighbour, or of the bed something lies over. */
function restingLines(frame: Frame, of: SheetItem | Bed): Resting {
  const inFrame = known.get(frame) ?? new WeakMap<SheetItem | Bed, Resting>();
  known.set(frame, inFrame);
  const made = inFrame.get(of) ?? madeLines(frame, of);
  inFrame.set(of, made);
  return made;
}

function madeLines(frame: Frame, of: SheetItem | Bed): Resting {
  const isOwnBed = !("what" in of);
  const shape = isOwnBed ? of.outline : of.shape;
  const name = isOwnBed ? bedNamed(of.code) : nameOf(of);
  return {
    edges: edgeLines(shape, frame, name),
    middles: middleLines(shape, frame, name, isOwnBed),
    box: isAlongFrame(shape, frame) ? boundsInFrame(frame, shapeCorners(shape)) : null,
  };
}

/** What lies on the sheet, and the ids in it that are in the hand and no target. */
export interface SnapGround {
  readonly items: SheetItems;
  readonly moving: ReadonlySet<string>;
}

/** What is drawn, moved or pulled. */
export interface SnapMover {
  readonly what: SheetItem["what"];
  /** Where it lies now. */
  readonly shape: Shape;
  /** The bed it lies over, for a planting. */
  readonly bed?: Bed | undefined;
}

/**
 * Lines for an object of the frame's turn.
 * @param frame the same object for as long as it can be: lines of what rests are kept by it
 */
export function snapTargets(
  { items, moving }: SnapGround,
  frame: Frame,
  { what, shape, bed }: SnapMover,
): SnapLines {
  const own = boundsInFrame(frame, shapeCorners(shape));
  const neighbours = items
    .within(growBounds(outlineOf(shape).bounds, NEIGHBOUR_M))
    .filter((item) => !moving.has(item.id) && item.id !== bed?.id && isNeighbour(item, what, bed))
    .map((item) => restingLines(frame, item));
  const ownBed = bed ? [restingLines(frame, bed)] : [];
  return joinLines([
    ...ownBed.flatMap(({ middles, edges }) => [middles, edges]),
    ...neighbours.map(({ edges }) => edges),
    ...neighbours.map(({ middles }) => middles),
    equalGapLines(
      neighbours.flatMap(({ box }) => box ?? []),
      own,
    ),
  ]);
}

function isNeighbour(item: SheetItem, what: SheetItem["what"], bed: Bed | undefined): boolean {
  if (item.what === "planting") {
    return what === "planting" && (bed === undefined || item.planting.bed === bed.id);
  }
  if (item.what === "surrounding") return what !== "planting" && item.shape.shape !== "point";
  return what !== "planting" || bed === undefined;
}
