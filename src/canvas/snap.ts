/**
 * Snapping, in a frame that is turned with the bed or the object itself: x across, y along. Edges
 * and middle lines within reach of the pointer win; otherwise sizes and places go in small steps.
 */
import type { Bounds } from "../core/geometry/bounds.ts";
import { type Point, turnPoint } from "../core/geometry/point.ts";
import { type LengthUnit, METRES_PER_FOOT } from "../core/model/length.ts";
import type { Guide } from "./sketch-store.ts";

export interface Frame {
  readonly origin: Point;
  /** Degrees clockwise from the sheet's up. */
  readonly turnDeg: number;
}

/** A line of the frame something may lie on. */
export interface SnapLine {
  /** Where it lies across it, metres. */
  readonly at: number;
  /** From where to where it runs. */
  readonly reach: readonly [number, number];
  readonly label: string;
  /** A middle line takes middles, any other takes edges. */
  readonly isMiddle: boolean;
}

export interface SnapLines {
  /** Lines of equal x, and of equal y. */
  readonly x: readonly SnapLine[];
  readonly y: readonly SnapLine[];
}

export interface SnapSettings {
  readonly lines: SnapLines;
  /** How near an edge has to come, metres. */
  readonly reachM: number;
  /** Step of the grid, metres. */
  readonly stepM: number;
  /** A place of the frame the grid is counted from. */
  readonly gridFrom: Point;
}

/** The grid's step: a tenth of a metre, or three inches. */
export function snapStep(unit: LengthUnit): number {
  return unit === "m" ? 0.1 : METRES_PER_FOOT / 4;
}

export function intoFrame(frame: Frame, place: Point): Point {
  const straight = turnPoint(place, frame.origin, -frame.turnDeg);
  return { x: straight.x - frame.origin.x, y: straight.y - frame.origin.y };
}

export function outOfFrame(frame: Frame, place: Point): Point {
  return turnPoint(
    { x: place.x + frame.origin.x, y: place.y + frame.origin.y },
    frame.origin,
    frame.turnDeg,
  );
}

/** The box around corners in the frame. */
export function boundsInFrame(frame: Frame, corners: readonly Point[]): Bounds {
  const inside = corners.map((corner) => intoFrame(frame, corner));
  return {
    minX: Math.min(...inside.map(({ x }) => x)),
    minY: Math.min(...inside.map(({ y }) => y)),
    maxX: Math.max(...inside.map(({ x }) => x)),
    maxY: Math.max(...inside.map(({ y }) => y)),
  };
}

interface Snapped {
  readonly shift: number;
  readonly line: SnapLine | null;
}

/**
 * The shift that brings the middle onto a middle line in reach, else an edge onto the nearest
 * line in reach, else the first edge onto the grid.
 */
export function snapAlong(
  edges: readonly number[],
  middle: number | null,
  lines: readonly SnapLine[],
  { reachM, stepM }: SnapSettings,
  gridFrom: number,
): Snapped {
  const shifts = (places: readonly number[], isMiddle: boolean) =>
    lines
      .filter((line) => line.isMiddle === isMiddle)
      .flatMap((line) => places.map((place): Snapped => ({ shift: line.at - place, line })))
      .filter(({ shift }) => Math.abs(shift) <= reachM)
      .sort((a, b) => Math.abs(a.shift) - Math.abs(b.shift));
  const [first = 0] = edges;
  return (
    shifts(middle === null ? [] : [middle], true)[0] ??
    shifts(edges, false)[0] ?? { shift: onStep(first, gridFrom, stepM) - first, line: null }
  );
}

export function onStep(value: number, from: number, stepM: number): number {
  return from + Math.round((value - from) / stepM) * stepM;
}

export interface SnappedMove {
  /** Shift in the sheet's own directions, metres. */
  readonly shift: Point;
  readonly guides: readonly Guide[];
}

/**
 * Where a box that is being moved comes to rest.
 * @param locked directions of the frame that must not change
 */
export function snapMove(
  frame: Frame,
  box: Bounds,
  settings: SnapSettings,
  locked: { readonly x: boolean; readonly y: boolean } = { x: false, y: false },
): SnappedMove {
  const { lines, gridFrom } = settings;
  const stay: Snapped = { shift: 0, line: null };
  const x = locked.x
    ? stay
    : snapAlong([box.minX, box.maxX], (box.minX + box.maxX) / 2, lines.x, settings, gridFrom.x);
  const y = locked.y
    ? stay
    : snapAlong([box.minY, box.maxY], (box.minY + box.maxY) / 2, lines.y, settings, gridFrom.y);
  const moved = {
    minX: box.minX + x.shift,
    maxX: box.maxX + x.shift,
    minY: box.minY + y.shift,
    maxY: box.maxY + y.shift,
  };
  const guides: Guide[] = [];
  if (x.line) guides.push(guideAlong(frame, "x", x.line, [moved.minY, moved.maxY]));
  if (y.line) guides.push(guideAlong(frame, "y", y.line, [moved.minX, moved.maxX]));
  return { shift: turnPoint({ x: x.shift, y: y.shift }, { x: 0, y: 0 }, frame.turnDeg), guides };
}

/** A guide along a line, as far as the line and what lies on it reach. */
export function guideAlong(
  frame: Frame,
  axis: "x" | "y",
  line: SnapLine,
  reach: readonly [number, number],
): Guide {
  const from = Math.min(line.reach[0], reach[0]);
  const to = Math.max(line.reach[1], reach[1]);
  const place = (along: number) =>
    outOfFrame(frame, axis === "x" ? { x: line.at, y: along } : { x: along, y: line.at });
  return { from: place(from), to: place(to), label: line.label };
}
