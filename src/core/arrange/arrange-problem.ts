/**
 * What there is to arrange: plantings that may move, beds they may lie in, and everything that
 * stays. A planting keeps its size and lies along a bed or straight across it.
 */
import { OVERLAP_TOLERANCE_M, standTogether } from "../checks/overlap.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import type { Stand } from "../checks/stand.ts";
import { overlapDepth } from "../geometry/containment.ts";
import { type Outline, outlineOf } from "../geometry/outline.ts";
import { turnPoint } from "../geometry/point.ts";
import type { RectangleShape } from "../model/plan.ts";
import { distanceToKeep } from "../remedies/ground-problem.ts";
import { type RotationWishes, rotationWishes } from "./rotation-wishes.ts";

/** Where a movable planting lies: in which bed, and its middle in metres from the bed's middle. */
export interface Place {
  readonly bed: number;
  readonly across: number;
  readonly along: number;
}

export interface Piece {
  readonly id: string;
  readonly home: RectangleShape;
  readonly homeOutline: Outline;
  /** Where it lies now, if it lies along or straight across a bed it fits; else null. */
  readonly homePlace: Place | null;
  /** Beds it fits, each with the room its middle has there. */
  readonly rooms: readonly Room[];
  /** Stands it must keep away from. */
  readonly keeps: readonly Keep[];
  /** Ground it would rather not lie on. */
  readonly wishes: RotationWishes;
}

export interface Room {
  readonly bed: number;
  /** Whether it lies straight across the bed rather than along it. */
  readonly isAcross: boolean;
  /** Its middle may lie so far from the bed's middle, metres each way. */
  readonly across: number;
  readonly along: number;
}

interface Keep {
  /** Place in the list of all stands: pieces first, then what stays. */
  readonly other: number;
  readonly metres: number;
  /** Bloom dates are missing: too near is no conflict, only unknown. */
  readonly isUndated: boolean;
}

export interface ArrangeProblem {
  readonly pieces: readonly Piece[];
  readonly beds: readonly RectangleShape[];
  /** Outlines of what stays, after the pieces in the list of all stands. */
  readonly fixed: readonly Outline[];
  /** Whether each of those stands on the ground (a planting) or is only a pollen source. */
  readonly isFixedGround: readonly boolean[];
  /**
   * Whether two of all stands take ground at the same time: what is cleared before the other starts
   * leaves it its ground.
   */
  readonly areTogether: (a: number, b: number) => boolean;
  /** Longest way across all beds, metres. */
  readonly spanM: number;
}

/**
 * The problem of a checked layout, with what grew on its ground before as wishes. Locked plantings,
 * outlines that are no rectangle and plantings no bed has room for stay.
 */
export function arrangeProblem({ plan, layout, result }: CheckedLayout): ArrangeProblem {
  const beds = layout.beds.flatMap(({ outline }) =>
    outline.shape === "rectangle" ? [outline] : [],
  );
  const movable: {
    readonly stand: Stand;
    readonly home: RectangleShape;
    rooms: readonly Room[];
  }[] = [];
  const staying: Stand[] = [];
  for (const stand of result.stands) {
    const home = stand.planting?.locked === true ? undefined : stand.planting?.outline;
    const rooms = home?.shape === "rectangle" ? roomsFor(home, beds) : [];
    if (home?.shape === "rectangle" && rooms.length > 0) movable.push({ stand, home, rooms });
    else staying.push(stand);
  }
  const all = [...movable.map(({ stand }) => stand), ...staying];
  return {
    beds,
    pieces: movable.map(({ stand, home, rooms }) => ({
      id: stand.id,
      home,
      homeOutline: stand.outline,
      homePlace: placeNow(home, rooms, beds),
      rooms,
      keeps: all.flatMap((other, index): readonly Keep[] => {
        const metres = other === stand ? 0 : distanceToKeep(stand, other);
        return metres > 0 ? [{ other: index, metres, isUndated: areUndated(stand, other) }] : [];
      }),
      wishes: rotationWishes(stand, plan),
    })),
    fixed: staying.map(({ outline }) => outline),
    isFixedGround: staying.map(({ planting }) => planting !== null),
    areTogether: (a, b) => {
      const [one, other] = [all[a], all[b]];
      return one === undefined || other === undefined || standTogether(one, other);
    },
    spanM: spanOf([...result.bedOutlines.values()].map(({ outline }) => outline)),
  };
}

/** Whether time cannot be compared in either direction. */
function areUndated(a: Stand, b: Stand): boolean {
  return (a.receives === null || b.sheds === null) && (b.receives === null || a.sheds === null);
}

/** How a rectangle fits each bed: as it lies to its present bed if it can, else the other way. */
function roomsFor(shape: RectangleShape, beds: readonly RectangleShape[]): readonly Room[] {
  return beds.flatMap((bed, index): readonly Room[] => {
    const turn = Math.abs((((shape.turnDeg - bed.turnDeg) % 180) + 180) % 180);
    const liesAcross = turn > 45 && turn < 135;
    for (const isAcross of [liesAcross, !liesAcross]) {
      const [width, length] = isAcross
        ? [shape.lengthM, shape.widthM]
        : [shape.widthM, shape.lengthM];
      const across = (bed.widthM - width) / 2;
      const along = (bed.lengthM - length) / 2;
      if (across < -1e-6 || along < -1e-6) continue;
      return [{ bed: index, isAcross, across: Math.max(0, across), along: Math.max(0, along) }];
    }
    return [];
  });
}

/** In which room a rectangle lies already, straight to its bed. */
function placeNow(
  shape: RectangleShape,
  rooms: readonly Room[],
  beds: readonly RectangleShape[],
): Place | null {
  for (const room of rooms) {
    const bed = beds[room.bed] as RectangleShape;
    const straight = turnPoint(shape, { x: bed.x, y: bed.y }, -bed.turnDeg);
    const across = straight.x - bed.x;
    const along = straight.y - bed.y;
    const turn = (((shape.turnDeg - bed.turnDeg - (room.isAcross ? 90 : 0)) % 180) + 180) % 180;
    const isStraight = Math.min(turn, 180 - turn) < 0.01;
    const isInside = Math.abs(across) <= room.across + 1e-3 && Math.abs(along) <= room.along + 1e-3;
    if (isStraight && isInside) return { bed: room.bed, across, along };
  }
  return null;
}

/** The rectangle a piece covers at a place. */
export function shapeAt(
  { beds }: ArrangeProblem,
  { home, rooms }: Piece,
  place: Place,
): RectangleShape {
  const bed = beds[place.bed] as RectangleShape;
  const room = rooms.find((entry) => entry.bed === place.bed);
  const middle = turnPoint(
    { x: bed.x + place.across, y: bed.y + place.along },
    { x: bed.x, y: bed.y },
    bed.turnDeg,
  );
  const turnDeg = room?.isAcross === true ? bed.turnDeg - 90 : bed.turnDeg;
  return { ...home, x: middle.x, y: middle.y, turnDeg };
}

/** Metres by which two outlines lie in each other beyond what the checks allow; 0 when they do not. */
export function overlapOf(a: Outline, b: Outline): number {
  const [first, second] = [a.rings[0], b.rings[0]];
  if (!first || !second || !boundsMeet(a, b)) return 0;
  const areFourCornered =
    a.rings.length === 1 && b.rings.length === 1 && first.length === 8 && second.length === 8;
  const depth = areFourCornered
    ? Math.min(leastShadow(first, second), leastShadow(second, first))
    : overlapDepth(a, b).distanceM;
  return depth > OVERLAP_TOLERANCE_M * 0.5 ? depth : 0;
}

function boundsMeet({ bounds: a }: Outline, { bounds: b }: Outline): boolean {
  return a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
}

/** The least by which the shadows of two convex rings overlap, over the edges of the first. */
function leastShadow(first: Float64Array, second: Float64Array): number {
  let least = Infinity;
  for (let index = 0; index < first.length; index += 2) {
    const next = (index + 2) % first.length;
    const ex = (first[next] as number) - (first[index] as number);
    const ey = (first[next + 1] as number) - (first[index + 1] as number);
    const length = Math.hypot(ex, ey);
    if (length === 0) continue;
    const [nx, ny] = [-ey / length, ex / length];
    const a = shadow(first, nx, ny);
    const b = shadow(second, nx, ny);
    least = Math.min(least, Math.min(a.high, b.high) - Math.max(a.low, b.low));
    if (least <= 0) return 0;
  }
  return least;
}

function shadow(ring: Float64Array, nx: number, ny: number) {
  let low = Infinity;
  let high = -Infinity;
  for (let index = 0; index < ring.length; index += 2) {
    const at = (ring[index] as number) * nx + (ring[index + 1] as number) * ny;
    if (at < low) low = at;
    if (at > high) high = at;
  }
  return { low, high };
}

function spanOf(outlines: readonly Outline[]): number {
  const xs = outlines.flatMap(({ bounds }) => [bounds.minX, bounds.maxX]);
  const ys = outlines.flatMap(({ bounds }) => [bounds.minY, bounds.maxY]);
  if (xs.length === 0) return 1;
  return Math.hypot(Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys));
}

/** The outline of a piece at a place, or where it lies now when the place is null. */
export function outlineAt(problem: ArrangeProblem, piece: Piece, place: Place | null): Outline {
  return place === null ? piece.homeOutline : outlineOf(shapeAt(problem, piece, place));
}
