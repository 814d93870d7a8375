/** Fewer corners for a walked line, none farther off than a tolerance (Douglas and Peucker 1973). */
import { type Point, pointDistance } from "../geometry/point.ts";

/** The line through some of its places; both ends stay. No place lies farther from it than given. */
export function simplifiedLine(places: readonly Point[], toleranceM: number): readonly Point[] {
  if (toleranceM <= 0 || places.length < 3) return places;
  const isKept = new Uint8Array(places.length);
  isKept[0] = 1;
  isKept[places.length - 1] = 1;
  const spans: (readonly [number, number])[] = [[0, places.length - 1]];
  for (let span = spans.pop(); span; span = spans.pop()) {
    const [first, last] = span;
    const farthest = farthestOf(places, first, last);
    if (farthest.distanceM <= toleranceM) continue;
    isKept[farthest.index] = 1;
    spans.push([first, farthest.index], [farthest.index, last]);
  }
  return places.filter((_, index) => isKept[index] === 1);
}

/**
 * A closed outline with fewer corners. It is cut at two corners that surely stay: the one farthest
 * from the first, and the one farthest from that.
 */
export function simplifiedRing(ring: readonly Point[], toleranceM: number): readonly Point[] {
  if (toleranceM <= 0 || ring.length < 4) return ring;
  const far = farthestFrom(ring, ring[0]);
  const start = farthestFrom(ring, ring[far]);
  const turned = [...ring.slice(start), ...ring.slice(0, start)];
  const cut = (far - start + ring.length) % ring.length;
  const [first] = turned;
  if (!first) return ring;
  const there = simplifiedLine(turned.slice(0, cut + 1), toleranceM);
  const back = simplifiedLine([...turned.slice(cut), first], toleranceM);
  return [...there, ...back.slice(1, -1)];
}

function farthestFrom(places: readonly Point[], from: Point | undefined): number {
  let [index, most] = [0, -1];
  places.forEach((place, at) => {
    const distance = from ? pointDistance(from, place) : 0;
    if (distance > most) [index, most] = [at, distance];
  });
  return index;
}

/** The place between two others that lies farthest from the line between them. */
function farthestOf(places: readonly Point[], first: number, last: number) {
  const [a, b] = [places[first] as Point, places[last] as Point];
  let farthest = { index: first, distanceM: -1 };
  for (let index = first + 1; index < last; index += 1) {
    const distanceM = fromSegment(places[index] as Point, a, b);
    if (distanceM > farthest.distanceM) farthest = { index, distanceM };
  }
  return farthest;
}

function fromSegment(place: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : ((place.x - a.x) * dx + (place.y - a.y) * dy) / square;
  const share = Math.min(1, Math.max(0, along));
  return Math.hypot(place.x - a.x - share * dx, place.y - a.y - share * dy);
}
