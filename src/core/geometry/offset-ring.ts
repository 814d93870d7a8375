/**
 * The line that lies a given distance from an outline: the edge of the ground a seed parent needs
 * around it. Exact, of straight pieces and arcs: every edge pushed outward, an arc around every
 * outward corner. At inward corners pieces run into each other; all are then cut where they meet
 * and what lies nearer than the distance is dropped (cost: pieces squared).
 */
import { gapBetween } from "./gap.ts";
import { type Outline, pointOutline } from "./outline.ts";
import type { Point } from "./point.ts";

export interface StraightPiece {
  readonly kind: "straight";
  readonly from: Point;
  readonly to: Point;
}

/** Angles in radians anticlockwise from the sheet's right; runs anticlockwise. */
export interface ArcPiece {
  readonly kind: "arc";
  readonly centre: Point;
  readonly radiusM: number;
  readonly start: number;
  readonly sweep: number;
}

export type RingPiece = StraightPiece | ArcPiece;

/** The pieces in order around the outline, anticlockwise. Holes do not count. */
export function offsetRing(outline: Outline, radiusM: number): readonly RingPiece[] {
  const corners = cornersOf(outline.rings[0] ?? new Float64Array());
  const [first] = corners;
  if (!first || radiusM <= 0) return [];
  if (corners.length === 1) {
    return [{ kind: "arc", centre: first, radiusM, start: 0, sweep: Math.PI * 2 }];
  }
  const pieces: RingPiece[] = [];
  let isConvex = true;
  corners.forEach((corner, index) => {
    const before = corners.at(index - 1) ?? first;
    const after = corners[(index + 1) % corners.length] ?? first;
    const inward = outwardAngle(before, corner);
    const outward = outwardAngle(corner, after);
    const turn = normalAngle(outward - inward);
    if (turn < Math.PI) {
      if (turn > 0)
        pieces.push({ kind: "arc", centre: corner, radiusM, start: inward, sweep: turn });
    } else {
      isConvex = false;
    }
    const push = { x: Math.cos(outward) * radiusM, y: Math.sin(outward) * radiusM };
    pieces.push({
      kind: "straight",
      from: { x: corner.x + push.x, y: corner.y + push.y },
      to: { x: after.x + push.x, y: after.y + push.y },
    });
  });
  return isConvex ? pieces : trimmed(pieces, outline, radiusM);
}

/** Corners anticlockwise, none twice in a row. */
function cornersOf(ring: Float64Array): readonly Point[] {
  const corners: Point[] = [];
  let twiceArea = 0;
  for (let index = 0; index < ring.length; index += 2) {
    const corner = { x: ring[index] as number, y: ring[index + 1] as number };
    const next = (index + 2) % ring.length;
    const after = { x: ring[next] as number, y: ring[next + 1] as number };
    twiceArea += corner.x * after.y - after.x * corner.y;
    if (ring.length === 2 || corner.x !== after.x || corner.y !== after.y) corners.push(corner);
  }
  return twiceArea < 0 ? corners.reverse() : corners;
}

/** Direction away from the ground across an edge whose ground lies to its left. */
function outwardAngle(from: Point, to: Point): number {
  return Math.atan2(from.x - to.x, to.y - from.y);
}

function normalAngle(angle: number): number {
  const turns = angle % (Math.PI * 2);
  return turns < 0 ? turns + Math.PI * 2 : turns;
}

function trimmed(
  pieces: readonly RingPiece[],
  outline: Outline,
  radiusM: number,
): readonly RingPiece[] {
  const least = radiusM * (1 - 1e-9) - 1e-9;
  return pieces.flatMap((piece) => {
    const cuts = pieces
      .flatMap((other) => (other === piece ? [] : crossings(piece, other)))
      .filter((share) => share > 0 && share < 1)
      .sort((a, b) => a - b);
    const ends = [0, ...cuts, 1];
    return ends.slice(1).flatMap((to, index) => {
      const from = ends[index] ?? 0;
      if (to - from < 1e-12) return [];
      const middle = pieceAt(piece, (from + to) / 2);
      return gapBetween(pointOutline(middle), outline).distanceM >= least
        ? [part(piece, from, to)]
        : [];
    });
  });
}

/** The place a share (0 to 1) of the way along a piece. */
export function pieceAt(piece: RingPiece, share: number): Point {
  if (piece.kind === "straight") {
    return {
      x: piece.from.x + (piece.to.x - piece.from.x) * share,
      y: piece.from.y + (piece.to.y - piece.from.y) * share,
    };
  }
  const angle = piece.start + piece.sweep * share;
  return {
    x: piece.centre.x + Math.cos(angle) * piece.radiusM,
    y: piece.centre.y + Math.sin(angle) * piece.radiusM,
  };
}

/** The part of a piece between two shares of its length. */
export function part(piece: RingPiece, from: number, to: number): RingPiece {
  return piece.kind === "straight"
    ? { kind: "straight", from: pieceAt(piece, from), to: pieceAt(piece, to) }
    : { ...piece, start: piece.start + piece.sweep * from, sweep: piece.sweep * (to - from) };
}

export function pieceLength(piece: RingPiece): number {
  return piece.kind === "arc"
    ? piece.radiusM * piece.sweep
    : Math.hypot(piece.to.x - piece.from.x, piece.to.y - piece.from.y);
}

/** Shares along the first piece where the second crosses it. */
function crossings(piece: RingPiece, other: RingPiece): readonly number[] {
  const places =
    piece.kind === "straight"
      ? other.kind === "straight"
        ? lineCrossing(piece, other)
        : circleCrossings(piece, other)
      : other.kind === "straight"
        ? circleCrossings(other, piece)
        : arcCrossings(piece, other);
  return places
    .filter((place) => isOn(other, place))
    .map((place) => shareAt(piece, place))
    .filter((share) => share !== null);
}

function isOn(piece: RingPiece, place: Point): boolean {
  const share = shareAt(piece, place);
  return share !== null && share >= -1e-9 && share <= 1 + 1e-9;
}

/** Where along a piece a place on its line or circle lies. */
function shareAt(piece: RingPiece, place: Point): number | null {
  if (piece.kind === "straight") {
    const dx = piece.to.x - piece.from.x;
    const dy = piece.to.y - piece.from.y;
    const square = dx * dx + dy * dy;
    return square === 0
      ? null
      : ((place.x - piece.from.x) * dx + (place.y - piece.from.y) * dy) / square;
  }
  const angle = Math.atan2(place.y - piece.centre.y, place.x - piece.centre.x);
  return normalAngle(angle - piece.start) / piece.sweep;
}

function lineCrossing(a: StraightPiece, b: StraightPiece): readonly Point[] {
  const ax = a.to.x - a.from.x;
  const ay = a.to.y - a.from.y;
  const bx = b.to.x - b.from.x;
  const by = b.to.y - b.from.y;
  const cross = ax * by - ay * bx;
  if (cross === 0) return [];
  const share = ((b.from.x - a.from.x) * by - (b.from.y - a.from.y) * bx) / cross;
  return [pieceAt(a, share)];
}

function circleCrossings(line: StraightPiece, arc: ArcPiece): readonly Point[] {
  const dx = line.to.x - line.from.x;
  const dy = line.to.y - line.from.y;
  const square = dx * dx + dy * dy;
  if (square === 0) return [];
  const foot = ((arc.centre.x - line.from.x) * dx + (arc.centre.y - line.from.y) * dy) / square;
  const nearest = pieceAt(line, foot);
  const away = Math.hypot(nearest.x - arc.centre.x, nearest.y - arc.centre.y);
  if (away > arc.radiusM) return [];
  const half = Math.sqrt((arc.radiusM ** 2 - away ** 2) / square);
  return [pieceAt(line, foot - half), pieceAt(line, foot + half)];
}

/** Two arcs of one radius. */
function arcCrossings(a: ArcPiece, b: ArcPiece): readonly Point[] {
  const dx = b.centre.x - a.centre.x;
  const dy = b.centre.y - a.centre.y;
  const apart = Math.hypot(dx, dy);
  if (apart === 0 || apart > a.radiusM * 2) return [];
  const half = Math.sqrt(a.radiusM ** 2 - (apart / 2) ** 2);
  const middle = { x: a.centre.x + dx / 2, y: a.centre.y + dy / 2 };
  const side = { x: (-dy / apart) * half, y: (dx / apart) * half };
  return [
    { x: middle.x + side.x, y: middle.y + side.y },
    { x: middle.x - side.x, y: middle.y - side.y },
  ];
}
