/**
 * Snapping, in a frame that is turned with the bed or the object itself: x across, y along. Edges
 * and middle lines within reach of the pointer win; otherwise sizes and places go in small steps.
 */
import type { Bounds } from "../../core/geometry/bounds.ts";
import { type Point, turnPoint } from "../../core/geometry/point.ts";
import { type LengthUnit, METRES_PER_FOOT } from "../../core/model/length.ts";
import type { Guide } from "./guide.ts";

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
  /** Which part of what moves comes to lie on it; `first` and `last` are its two edges. */
  readonly takes: "edge" | "middle" | "first" | "last";
  /** Wins over any other line in reach, however near: the middle of the bed a planting lies on. */
  readonly isFavourite?: boolean;
  /** Gaps that become equal on this line: from where to where they run across it. */
  readonly gaps?: readonly (readonly [number, number])[];
}

/** Parts of what is moved or pulled along one direction of the frame, metres. */
export interface SnapParts {
  readonly first?: number;
  readonly last?: number;
  readonly middle?: number;
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

/** The shift onto a favourite line in reach, else onto the nearest one, else onto the grid. */
export function snapAlong(
  parts: SnapParts,
  lines: readonly SnapLine[],
  { reachM, stepM }: Pick<SnapSettings, "reachM" | "stepM">,
  gridFrom: number,
): Snapped {
  let best: Snapped | null = null;
  for (const line of lines) {
    for (const place of placesFor(line, parts)) {
      const shift = line.at - place;
      if (Math.abs(shift) > reachM || (best && !isBetter(line, shift, best))) continue;
      best = { shift, line };
    }
  }
  const start = parts.first ?? parts.last ?? 0;
  return best ?? { shift: onStep(start, gridFrom, stepM) - start, line: null };
}

function placesFor({ takes }: SnapLine, parts: SnapParts): readonly number[] {
  const wanted = takes === "edge" ? [parts.first, parts.last] : [parts[takes]];
  return wanted.filter((place) => place !== undefined);
}

/** Differences below a micrometre decide nothing: the line that came first stays. */
function isBetter(line: SnapLine, shift: number, than: Snapped): boolean {
  const isFavourite = line.isFavourite === true;
  if (isFavourite !== (than.line?.isFavourite === true)) return isFavourite;
  return Math.abs(shift) < Math.abs(than.shift) - 1e-6;
}

export function onStep(value: number, from: number, stepM: number): number {
  return from + Math.round((value - from) / stepM) * stepM;
}

export interface SnappedMove {
  /** Metres; of a box in the sheet's own directions, of a corner in those of the frame. */
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
  const x = locked.x ? stay : snapAlong(partsOf(box.minX, box.maxX), lines.x, settings, gridFrom.x);
  const y = locked.y ? stay : snapAlong(partsOf(box.minY, box.maxY), lines.y, settings, gridFrom.y);
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

function partsOf(first: number, last: number): Required<SnapParts> {
  return { first, last, middle: (first + last) / 2 };
}

/** A corner that is drawn or pulled, brought onto lines or steps of the frame. */
export function snapCorner(
  frame: Frame,
  corner: { readonly x: SnapParts; readonly y: SnapParts },
  settings: SnapSettings,
): SnappedMove {
  const { lines, gridFrom } = settings;
  const x = snapAlong(corner.x, lines.x, settings, gridFrom.x);
  const y = snapAlong(corner.y, lines.y, settings, gridFrom.y);
  const at = {
    x: (corner.x.first ?? corner.x.last ?? 0) + x.shift,
    y: (corner.y.first ?? corner.y.last ?? 0) + y.shift,
  };
  const guides: Guide[] = [];
  if (x.line) guides.push(guideAlong(frame, "x", x.line, [at.y, at.y]));
  if (y.line) guides.push(guideAlong(frame, "y", y.line, [at.x, at.x]));
  return { shift: { x: x.shift, y: y.shift }, guides };
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
  const across = (at: number, along: number) =>
    outOfFrame(frame, axis === "x" ? { x: at, y: along } : { x: along, y: at });
  const middle = (reach[0] + reach[1]) / 2;
  const gaps = line.gaps?.map(([a, b]) => [across(a, middle), across(b, middle)] as const);
  return { from: place(from), to: place(to), label: line.label, ...(gaps ? { gaps } : {}) };
}
