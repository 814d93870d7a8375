/** Handles of what is selected: where they are on the screen and which one is under the pointer. */
import { rectangleCorners, shapeCentre } from "../core/geometry/outline.ts";
import type { Point } from "../core/geometry/point.ts";
import type { PolygonShape, RectangleShape, Shape } from "../core/model/plan.ts";
import { type View, toPx } from "./viewport.ts";

/** Which side a handle pulls: -1 near or left, 1 far or right in the rectangle's own frame, 0 neither. */
export type Side = -1 | 0 | 1;

export type Handle =
  | { readonly kind: "size"; readonly across: Side; readonly along: Side }
  | { readonly kind: "turn" }
  | { readonly kind: "corner"; readonly index: number }
  /** Halfway along an edge: pulls a new corner out of it. */
  | { readonly kind: "new-corner"; readonly index: number };

export interface PlacedHandle {
  readonly handle: Handle;
  readonly at: Point;
}

export interface HandleSizes {
  /** Half the side of a drawn handle. */
  readonly halfPx: number;
  /** How far from its middle a handle still takes the pointer. */
  readonly reachPx: number;
  /** How far outside the shape the turning handle stands. */
  readonly turnPx: number;
}

/** Whether the main pointer is a finger; a touch screen with a mouse gets small handles. */
export function isCoarsePointer(): boolean {
  return matchMedia("(pointer: coarse)").matches;
}

export function handleSizes(isCoarse: boolean): HandleSizes {
  return isCoarse
    ? { halfPx: 9, reachPx: 22, turnPx: 44 }
    : { halfPx: 4.5, reachPx: 8, turnPx: 26 };
}

/** Corners of an outline with more than this many are changed in its particulars. */
const CORNERS_MOST = 60;

export function handlesOf(shape: Shape, view: View, sizes: HandleSizes): readonly PlacedHandle[] {
  switch (shape.shape) {
    case "rectangle":
      return rectangleHandles(shape, view, sizes);
    case "polygon":
      return polygonHandles(shape, view, sizes);
    case "point":
      return [];
  }
}

const SIDES: readonly Side[] = [-1, 0, 1];

/** Handles that would lie on each other on a small shape are left out: corners first, ends last. */
function rectangleHandles(
  shape: RectangleShape,
  view: View,
  sizes: HandleSizes,
): readonly PlacedHandle[] {
  const [near, left, far, right] = rectangleCorners(shape).map((corner) => toPx(view, corner));
  if (!near || !left || !far || !right) return [];
  const room = sizes.reachPx * 2;
  const hasWidth = shape.widthM * view.scale;
  const hasLength = shape.lengthM * view.scale;
  const placed: PlacedHandle[] = [];
  for (const across of SIDES) {
    for (const along of SIDES) {
      if (across === 0 && along === 0) continue;
      const isCorner = across !== 0 && along !== 0;
      if (isCorner && (hasWidth < room * 2 || hasLength < room * 2)) continue;
      if (across === -1 && hasWidth < room) continue;
      if (along === -1 && hasLength < room) continue;
      const at = mix(
        mix(near, right, (across + 1) / 2),
        mix(left, far, (across + 1) / 2),
        (along + 1) / 2,
      );
      placed.push({ handle: { kind: "size", across, along }, at });
    }
  }
  return [...placed, turnHandle(mix(left, far, 0.5), mix(near, right, 0.5), sizes)];
}

function polygonHandles(
  shape: PolygonShape,
  view: View,
  sizes: HandleSizes,
): readonly PlacedHandle[] {
  const corners = shape.corners.map(([x, y]) => toPx(view, { x, y }));
  const highest = corners.reduce((best, corner) => (corner.y < best.y ? corner : best), {
    x: 0,
    y: Infinity,
  });
  const turn = turnHandle(highest, toPx(view, shapeCentre(shape)), sizes);
  if (corners.length > CORNERS_MOST) return [turn];
  const placed: PlacedHandle[] = corners.map((at, index) => ({
    handle: { kind: "corner", index },
    at,
  }));
  corners.forEach((corner, index) => {
    const next = corners[(index + 1) % corners.length] ?? corner;
    if (Math.hypot(next.x - corner.x, next.y - corner.y) < sizes.reachPx * 4) return;
    placed.push({ handle: { kind: "new-corner", index }, at: mix(corner, next, 0.5) });
  });
  return [...placed, turn];
}

/** Outside the far end, away from the middle. */
function turnHandle(end: Point, from: Point, { turnPx }: HandleSizes): PlacedHandle {
  const length = Math.hypot(end.x - from.x, end.y - from.y) || 1;
  const at = {
    x: end.x + ((end.x - from.x) / length) * turnPx,
    y: end.y + ((end.y - from.y) / length) * turnPx,
  };
  return { handle: { kind: "turn" }, at };
}

function mix(a: Point, b: Point, share: number): Point {
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}

/** The nearest handle the pointer reaches, or null. */
export function handleAt(
  handles: readonly PlacedHandle[],
  px: Point,
  { reachPx }: HandleSizes,
): Handle | null {
  let best: Handle | null = null;
  let bestPx = reachPx;
  for (const { handle, at } of handles) {
    const away = Math.hypot(at.x - px.x, at.y - px.y);
    if (away > bestPx) continue;
    bestPx = away;
    best = handle;
  }
  return best;
}

/** The pointer's look over a handle: arrows along the way it pulls. */
export function handleCursor(handle: Handle, shape: Shape): string {
  if (handle.kind === "turn") return "grab";
  if (handle.kind !== "size" || shape.shape !== "rectangle") return "crosshair";
  // Degrees clockwise from up in which the handle pulls.
  const pull = (Math.atan2(handle.across, handle.along) * 180) / Math.PI + shape.turnDeg;
  const eighth = (((Math.round(pull / 45) % 4) + 4) % 4) as 0 | 1 | 2 | 3;
  return (["ns-resize", "nesw-resize", "ew-resize", "nwse-resize"] as const)[eighth];
}
