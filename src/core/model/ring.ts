/** Checks on one ring of corners; geometry proper lives in core/geometry. */
import Flatbush from "flatbush";

export type Corner = readonly [number, number];

const FLAT = "corners that enclose no ground";

/** Twice the signed area is positive when the corners run anticlockwise (y up). */
export function signedArea(ring: readonly Corner[]): number {
  let twice = 0;
  ring.forEach(([x, y], index) => {
    const [nextX, nextY] = ring[(index + 1) % ring.length] ?? [x, y];
    twice += x * nextY - nextX * y;
  });
  return twice / 2;
}

/**
 * What is wrong with a ring as the outline of a piece of ground, or null. A ring may not repeat a
 * corner, enclose nothing, or cross or touch itself. Edges are looked for by their boxes: rings of
 * some thousand corners take milliseconds, unless most of their edges lie over each other.
 */
export function ringProblem(ring: readonly Corner[]): string | null {
  if (ring.length < 3) return `${ring.length} corners`;
  for (let index = 0; index < ring.length; index += 1) {
    const [x, y] = at(ring, index);
    const [nextX, nextY] = at(ring, index + 1);
    if (x === nextX && y === nextY) return `corner ${index + 1} twice in a row`;
  }
  if (ring.every((corner) => turn(at(ring, 0), at(ring, 1), corner) === 0)) return FLAT;
  const clash = ring.length <= FEW ? clashAmongFew(ring) : clashAmongMany(ring);
  if (clash) {
    const [first, second] = clash;
    return `an outline that crosses or touches itself (edges ${first + 1} and ${second + 1})`;
  }
  return Math.abs(signedArea(ring)) < 1e-6 ? FLAT : null;
}

/** Corners up to which comparing every pair of edges is quickest. */
const FEW = 40;

type Clash = readonly [number, number] | null;

/** The first two edges that clash, each edge compared with all after it. */
function clashAmongFew(ring: readonly Corner[]): Clash {
  for (let first = 0; first < ring.length; first += 1) {
    for (let second = first + 1; second < ring.length; second += 1) {
      if (edgesClash(ring, first, second)) return [first, second];
    }
  }
  return null;
}

/** The same two edges, found by comparing only those whose boxes meet. */
function clashAmongMany(ring: readonly Corner[]): Clash {
  const boxes = ring.map((from, index) => {
    const to = at(ring, index + 1);
    return [
      Math.min(from[0], to[0]),
      Math.min(from[1], to[1]),
      Math.max(from[0], to[0]),
      Math.max(from[1], to[1]),
    ] as const;
  });
  const index = new Flatbush(ring.length);
  for (const box of boxes) index.add(...box);
  index.finish();
  for (const [first, box] of boxes.entries()) {
    let least = Infinity;
    index.search(...box, (second) => {
      if (second > first && second < least && edgesClash(ring, first, second)) least = second;
      return false;
    });
    if (least < Infinity) return [first, least];
  }
  return null;
}

function at(ring: readonly Corner[], index: number): Corner {
  return ring[index % ring.length] ?? [0, 0];
}

function edgesClash(ring: readonly Corner[], first: number, second: number): boolean {
  const a = at(ring, first);
  const b = at(ring, first + 1);
  const c = at(ring, second);
  const d = at(ring, second + 1);
  const isNext = second === first + 1;
  const isClosing = first === 0 && second === ring.length - 1;
  // Neighbouring edges share a corner; they clash only when one folds back over the other.
  if (isNext) return foldsBack(a, b, d);
  if (isClosing) return foldsBack(c, a, b);
  return segmentsMeet(a, b, c, d);
}

function foldsBack(before: Corner, corner: Corner, after: Corner): boolean {
  const inX = before[0] - corner[0];
  const inY = before[1] - corner[1];
  const outX = after[0] - corner[0];
  const outY = after[1] - corner[1];
  return inX * outY - inY * outX === 0 && inX * outX + inY * outY > 0;
}

function turn(a: Corner, b: Corner, c: Corner): number {
  return Math.sign((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));
}

function isWithin(a: Corner, b: Corner, p: Corner): boolean {
  return (
    Math.min(a[0], b[0]) <= p[0] &&
    p[0] <= Math.max(a[0], b[0]) &&
    Math.min(a[1], b[1]) <= p[1] &&
    p[1] <= Math.max(a[1], b[1])
  );
}

function segmentsMeet(a: Corner, b: Corner, c: Corner, d: Corner): boolean {
  const abc = turn(a, b, c);
  const abd = turn(a, b, d);
  const cda = turn(c, d, a);
  const cdb = turn(c, d, b);
  if (abc !== abd && cda !== cdb) return true;
  return (
    (abc === 0 && isWithin(a, b, c)) ||
    (abd === 0 && isWithin(a, b, d)) ||
    (cda === 0 && isWithin(c, d, a)) ||
    (cdb === 0 && isWithin(c, d, b))
  );
}
