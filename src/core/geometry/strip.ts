/** The parts of a piece of ground that lie between two parallel lines. */
import type { Point } from "./point.ts";

/** Parts smaller than this are where a line only touches a corner, square metres. */
const LEAST_AREA_M2 = 1e-9;

/** Corners in order, without the first repeated. */
export type Ring = readonly Point[];

/**
 * Parts of a piece of ground between two lines along x, each a simple ring; none where they miss
 * it. Ground of any shape may fall into several.
 * @param rings the outer ring and those of its holes, each either way round; no hole may lie
 *   wholly between the lines: it would be lost, so cut at its middle first
 * @param fromY the lower line, metres
 * @param toY the upper line, metres
 */
export function stripParts(rings: readonly Ring[], fromY: number, toY: number): readonly Ring[] {
  const [outer, ...holes] = rings;
  if (!outer) return [];
  const oneWay = holes.map((hole) => [...turnedLeft(hole)].reverse());
  const lowHoles = oneWay.filter((hole) => hole.every(({ y }) => y < toY));
  return upTo([turnedLeft(outer), ...oneWay], toY)
    .flatMap((part) => {
      const within = lowHoles.filter((hole) => isWithin(part, lowest(hole)));
      return upTo([part, ...within].map(flipped), -fromY);
    })
    .map(flipped)
    .filter((part) => ringArea(part) > LEAST_AREA_M2);
}

/** Area of a simple ring, square metres. */
export function ringArea(ring: Ring): number {
  return Math.abs(signedArea(ring));
}

function signedArea(ring: Ring): number {
  let twice = 0;
  let before = ring.at(-1);
  for (const corner of ring) {
    if (before) twice += before.x * corner.y - corner.x * before.y;
    before = corner;
  }
  return twice / 2;
}

/** The ring with its ground on the left of each edge. */
function turnedLeft(ring: Ring): Ring {
  return signedArea(ring) < 0 ? [...ring].reverse() : ring;
}

/** Upside down, with its ground on the same side of each edge. */
function flipped(ring: Ring): Ring {
  return ring.map(({ x, y }) => ({ x, y: -y })).reverse();
}

function lowest(ring: Ring): Point {
  return ring.reduce((low, corner) => (corner.y < low.y ? corner : low));
}

function isWithin(ring: Ring, { x, y }: Point): boolean {
  let isInside = false;
  let before = ring.at(-1);
  for (const corner of ring) {
    if (before && before.y > y !== corner.y > y) {
      const crossing = before.x + ((corner.x - before.x) * (y - before.y)) / (corner.y - before.y);
      if (x < crossing) isInside = !isInside;
    }
    before = corner;
  }
  return isInside;
}

/** A stretch of the ring below the line: where it comes in, its corners, where it goes out. */
interface Chain {
  readonly enterX: number;
  readonly leaveX: number;
  readonly points: readonly Point[];
}

/**
 * Parts of the ground with y up to a line, without the holes that lie wholly in them. A corner on
 * the line lies beyond it: a hole or bay that reaches the line parts the ground there.
 */
function upTo(rings: readonly Ring[], lineY: number): readonly Ring[] {
  const [outer] = rings;
  if (outer?.every(({ y }) => y < lineY)) return [outer];
  const chains = rings.flatMap((ring) => chainsBelow(ring, lineY));
  // Along the line ground lies between the first and second crossing, the third and fourth ...
  const crossings = chains
    .flatMap((chain) => [
      { x: chain.enterX, chain, isEntry: true },
      { x: chain.leaveX, chain, isEntry: false },
    ])
    .sort((a, b) => a.x - b.x);
  const next = new Map<Chain, Chain>();
  for (let at = 0; at + 1 < crossings.length; at += 2) {
    const [a, b] = [crossings[at], crossings[at + 1]];
    if (!a || !b) continue;
    if (a.isEntry) next.set(b.chain, a.chain);
    else next.set(a.chain, b.chain);
  }
  return joined(chains, next);
}

function chainsBelow(ring: Ring, lineY: number): readonly Chain[] {
  const count = ring.length;
  const at = (index: number) => ring[index % count] as Point;
  const isBelow = (index: number) => at(index).y < lineY;
  if (ring.every(({ y }) => y < lineY)) return [];
  const crossingX = (from: Point, to: Point) =>
    from.x + ((to.x - from.x) * (lineY - from.y)) / (to.y - from.y);
  const chains: Chain[] = [];
  for (let index = 0; index < count; index += 1) {
    if (isBelow(index) || !isBelow(index + 1)) continue;
    const enterX = crossingX(at(index), at(index + 1));
    const points = [{ x: enterX, y: lineY }];
    let place = index + 1;
    for (; isBelow(place); place += 1) points.push(at(place));
    const leaveX = crossingX(at(place - 1), at(place));
    chains.push({ enterX, leaveX, points: [...points, { x: leaveX, y: lineY }] });
  }
  return chains;
}

/** Rings made of chains, each going on with the one whose entry lies beside its end. */
function joined(chains: readonly Chain[], next: ReadonlyMap<Chain, Chain>): readonly Ring[] {
  const used = new Set<Chain>();
  const rings: Ring[] = [];
  for (const first of chains) {
    const points: Point[] = [];
    for (let chain: Chain | undefined = first; chain && !used.has(chain); chain = next.get(chain)) {
      used.add(chain);
      points.push(...chain.points);
    }
    const ring = points.filter((point, index) => !isSame(point, points.at(index - 1)));
    if (ring.length >= 3) rings.push(ring);
  }
  return rings;
}

function isSame(a: Point, b: Point | undefined): boolean {
  return b !== undefined && a.x === b.x && a.y === b.y;
}
