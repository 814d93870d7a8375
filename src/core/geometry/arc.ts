/** Curved edges: an arc of a circle through three places, as corners close enough to it. */
import { type Point, pointDistance } from "./point.ts";

/** An edge of corners may lie so far inside its arc, metres. Our choice: what a string laid in a garden shows. */
export const ARC_ERROR_M = 0.01;
/** However large the circle, an arc has no more edges than this. */
const MOST_EDGES = 96;
const LEAST_EDGES = 4;
/** A curve that bends less than this is a straight edge, metres. */
const LEAST_RISE_M = 0.001;

export interface ArcEdges {
  /** Corners after the first place, the last one being where the arc ends. */
  readonly corners: readonly Point[];
  /** Radius of the circle, metres; null where the three places lie on a line. */
  readonly radiusM: number | null;
  /** How far the edges lie inside the arc at most, metres. */
  readonly errorM: number;
}

/** The arc from one place to another by way of a third that it passes through. */
export function arcThrough(from: Point, via: Point, to: Point): ArcEdges {
  const centre = circleCentre(from, via, to);
  if (!centre) return { corners: [to], radiusM: null, errorM: 0 };
  const radiusM = pointDistance(centre, from);
  const angleOf = ({ x, y }: Point) => Math.atan2(y - centre.y, x - centre.x);
  const start = angleOf(from);
  // Anticlockwise turns from the start; the way that meets `via` before `to` is the arc's.
  const turnTo = (place: Point) => (angleOf(place) - start + 4 * Math.PI) % (2 * Math.PI);
  const isAnticlockwise = turnTo(via) <= turnTo(to);
  const sweep = isAnticlockwise ? turnTo(to) : turnTo(to) - 2 * Math.PI;
  const widest = 2 * Math.acos(Math.max(0, 1 - ARC_ERROR_M / radiusM));
  const wanted = Math.ceil(Math.abs(sweep) / widest);
  const edges = Math.min(MOST_EDGES, Math.max(LEAST_EDGES, wanted));
  const corners = Array.from({ length: edges }, (_, index) => {
    if (index === edges - 1) return to;
    const angle = start + (sweep * (index + 1)) / edges;
    return {
      x: micrometres(centre.x + radiusM * Math.cos(angle)),
      y: micrometres(centre.y + radiusM * Math.sin(angle)),
    };
  });
  const errorM = radiusM * (1 - Math.cos(Math.abs(sweep) / edges / 2));
  return { corners, radiusM, errorM };
}

/** Middle of the circle through three places; null where they are as good as on a line. */
function circleCentre(a: Point, b: Point, c: Point): Point | null {
  const [ab, ac] = [
    { x: b.x - a.x, y: b.y - a.y },
    { x: c.x - a.x, y: c.y - a.y },
  ];
  const cross = ab.x * ac.y - ab.y * ac.x;
  const chord = Math.hypot(ac.x, ac.y);
  if (chord === 0 || Math.abs(cross) / chord < LEAST_RISE_M) return null;
  const [abLength, acLength] = [ab.x ** 2 + ab.y ** 2, ac.x ** 2 + ac.y ** 2];
  return {
    x: a.x + (ac.y * abLength - ab.y * acLength) / (2 * cross),
    y: a.y + (ab.x * acLength - ac.x * abLength) / (2 * cross),
  };
}

/** No rounding noise in the plan file. */
function micrometres(metres: number): number {
  return Math.round(metres * 1e6) / 1e6;
}
