/** Handles of what is selected: where they are on the screen and which one is under the pointer. */
import { shapeCentre } from "../../core/geometry/outline.ts";
import { type Point, pointDistance } from "../../core/geometry/point.ts";
import type { PolygonShape, RectangleShape, Shape } from "../../core/model/plan.ts";
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
  /** How far from its middle a handle still takes the pointer: 24 px across, 44 for a finger. */
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
    : { halfPx: 4.5, reachPx: 12, turnPx: 26 };
}

/** Corners of an outline with more than this many are changed in its particulars. */
const CORNERS_MOST = 60;

/** Whether a handle may stand at a place of the screen: it would cover nothing of others. */
export type HasRoom = (px: Point) => boolean;

/** @param hasRoom asked for the turning handle alone: the others lie on the outline */
export function handlesOf(
  shape: Shape,
  view: View,
  sizes: HandleSizes,
  hasRoom: HasRoom = () => true,
): readonly PlacedHandle[] {
  switch (shape.shape) {
    case "rectangle":
      return rectangleHandles(shape, view, sizes, hasRoom);
    case "polygon":
      return polygonHandles(shape, view, sizes, hasRoom);
    case "point":
      return [];
  }
}

const SIDES: readonly Side[] = [-1, 0, 1];

/** On a small shape handles stand so many reaches from its middle: clear of it and each other. */
const CLEAR_REACHES = 1.45;

/** Handles that would lie on each other on a small shape are left out: corners first, ends last. */
function rectangleHandles(
  shape: RectangleShape,
  view: View,
  sizes: HandleSizes,
  hasRoom: HasRoom,
): readonly PlacedHandle[] {
  const room = sizes.reachPx * 2;
  // Between two handles there is ground left to take the shape itself by.
  const between = sizes.reachPx * 3;
  const hasWidth = shape.widthM * view.scale;
  const hasLength = shape.lengthM * view.scale;
  const centre = toPx(view, shape);
  const angle = (shape.turnDeg * Math.PI) / 180;
  const least = sizes.reachPx * CLEAR_REACHES;
  const halves = { x: Math.max(hasWidth / 2, least), y: Math.max(hasLength / 2, least) };
  /** A place so many pixels across and along from the middle, on the screen. */
  const place = (across: number, along: number): Point => ({
    x: centre.x + across * Math.cos(angle) + along * Math.sin(angle),
    y: centre.y + across * Math.sin(angle) - along * Math.cos(angle),
  });
  const placed: PlacedHandle[] = [];
  for (const across of SIDES) {
    for (const along of SIDES) {
      if (across === 0 && along === 0) continue;
      const isCorner = across !== 0 && along !== 0;
      if (isCorner && (hasWidth < room * 2 || hasLength < room * 2)) continue;
      if (across === -1 && hasWidth < between) continue;
      if (along === -1 && hasLength < between) continue;
      const at = place(across * halves.x, along * halves.y);
      placed.push({ handle: { kind: "size", across, along }, at });
    }
  }
  const out = { x: halves.x + sizes.turnPx, y: halves.y + sizes.turnPx };
  // The near end last: a bed's code stands there.
  const places = [place(0, out.y), place(out.x, 0), place(-out.x, 0), place(0, -out.y)];
  return [...placed, turnHandle(places, hasRoom)];
}

function polygonHandles(
  shape: PolygonShape,
  view: View,
  sizes: HandleSizes,
  hasRoom: HasRoom,
): readonly PlacedHandle[] {
  const corners = shape.corners.map(([x, y]) => toPx(view, { x, y }));
  const middle = toPx(view, shapeCentre(shape));
  // The highest corner first.
  const places = [...corners]
    .sort((a, b) => a.y - b.y)
    .map((corner) => outward(corner, middle, sizes));
  const turn = turnHandle(places, hasRoom);
  if (corners.length > CORNERS_MOST) return [turn];
  const placed: PlacedHandle[] = [];
  corners.forEach((at, index) => {
    // On a small outline some lie on each other: those come apart when the view is nearer.
    const isFree = placed.every((other) => pointDistance(other.at, at) >= sizes.reachPx * 2);
    if (isFree) placed.push({ handle: { kind: "corner", index }, at });
  });
  corners.forEach((corner, index) => {
    const next = corners[(index + 1) % corners.length] ?? corner;
    if (Math.hypot(next.x - corner.x, next.y - corner.y) < sizes.reachPx * 4) return;
    placed.push({ handle: { kind: "new-corner", index }, at: mix(corner, next, 0.5) });
  });
  return [...placed, turn];
}

/** At the first place that covers no neighbour, else at the first. */
function turnHandle(places: readonly Point[], hasRoom: HasRoom): PlacedHandle {
  const at = places.find(hasRoom) ?? places[0] ?? { x: 0, y: 0 };
  return { handle: { kind: "turn" }, at };
}

/** Outside a corner, away from the middle. */
function outward(end: Point, from: Point, { turnPx }: HandleSizes): Point {
  const length = Math.hypot(end.x - from.x, end.y - from.y) || 1;
  return {
    x: end.x + ((end.x - from.x) / length) * turnPx,
    y: end.y + ((end.y - from.y) / length) * turnPx,
  };
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
