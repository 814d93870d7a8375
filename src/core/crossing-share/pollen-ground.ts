/**
 * Ground that sheds pollen, as it looks from afar: four places on it that stand for the whole. They
 * carry its area, its middle and its spread either way, so that a curve summed over them differs
 * from the curve summed over the ground in the fourth power of size over distance only.
 */
import type { Outline } from "../geometry/outline.ts";

export interface PollenGround {
  readonly outline: Outline;
  /** Middle of the ground, metres. */
  readonly x: number;
  readonly y: number;
  /** Twice the way from the middle to the farthest corner, metres. */
  readonly spanM: number;
  /** x0, y0, x1, y1, ... of the places; empty where they cannot stand for it (crossing edges). */
  readonly places: readonly number[];
  /** Ground each of them stands for, square metres. */
  readonly placeM2: number;
}

/** So many spans off the places stand for the ground; the error is then under a per cent. */
export const FAR_SPANS = 2.5;

const made = new WeakMap<Outline, PollenGround>();

/** Made once for every outline. */
export function pollenGround(outline: Outline): PollenGround {
  const known = made.get(outline);
  if (known) return known;
  const ground = groundFrom(outline);
  made.set(outline, ground);
  return ground;
}

/** Whether a place is so far off that the ground's places stand for it. */
export function isFar({ x, y, spanM, places }: PollenGround, fromX: number, fromY: number) {
  const farM = FAR_SPANS * spanM;
  return places.length > 0 && (fromX - x) ** 2 + (fromY - y) ** 2 > farM * farM;
}

function groundFrom(outline: Outline): PollenGround {
  const sums = outline.rings.map(ringMoments);
  const whole = sums.reduce(
    (sum, ring, index) => added(sum, ring, index === 0 ? 1 : -1),
    NO_MOMENTS,
  );
  const { originX, originY } = sums[0] ?? NO_MOMENTS;
  const { area } = whole;
  const isGround = outline.hasInside && area > 0;
  const middleX = isGround ? whole.x / area : 0;
  const middleY = isGround ? whole.y / area : 0;
  const x = originX + middleX;
  const y = originY + middleY;
  const spanM = 2 * farthestCorner(outline, x, y);
  const places = isGround
    ? spreadPlaces(x, y, {
        xx: whole.xx / area - middleX ** 2,
        yy: whole.yy / area - middleY ** 2,
        xy: whole.xy / area - middleX * middleY,
      })
    : [];
  return { outline, x, y, spanM, places, placeM2: area / 4 };
}

interface Spread {
  readonly xx: number;
  readonly yy: number;
  readonly xy: number;
}

/** Two places either way along each axis of the ground, root two of its spread from the middle. */
function spreadPlaces(x: number, y: number, { xx, yy, xy }: Spread): readonly number[] {
  const mean = (xx + yy) / 2;
  const off = Math.hypot((xx - yy) / 2, xy);
  const turn = Math.atan2(2 * xy, xx - yy) / 2;
  const along = Math.sqrt(2 * (mean + off));
  const across = Math.sqrt(2 * Math.max(0, mean - off));
  if (!Number.isFinite(along) || mean - off < -1e-9 * (mean + off)) return [];
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return [
    x + along * cos,
    y + along * sin,
    x - along * cos,
    y - along * sin,
    x - across * sin,
    y + across * cos,
    x + across * sin,
    y - across * cos,
  ];
}

interface Moments {
  readonly originX: number;
  readonly originY: number;
  readonly area: number;
  /** Integrals of x, y, x squared, y squared and x times y over the ground, from the origin. */
  readonly x: number;
  readonly y: number;
  readonly xx: number;
  readonly yy: number;
  readonly xy: number;
}

const NO_MOMENTS: Moments = { originX: 0, originY: 0, area: 0, x: 0, y: 0, xx: 0, yy: 0, xy: 0 };

/** Of the ground one ring encloses, from the ring's own first corner of the outline's first ring. */
function ringMoments(ring: Float64Array, _index: number, rings: readonly Float64Array[]): Moments {
  const [originX = 0, originY = 0] = rings[0] ?? [];
  let [area, x, y, xx, yy, xy] = [0, 0, 0, 0, 0, 0];
  let ax = (ring[ring.length - 2] as number) - originX;
  let ay = (ring[ring.length - 1] as number) - originY;
  for (let index = 0; index < ring.length; index += 2) {
    const bx = (ring[index] as number) - originX;
    const by = (ring[index + 1] as number) - originY;
    const cross = ax * by - bx * ay;
    area += cross / 2;
    x += (cross * (ax + bx)) / 6;
    y += (cross * (ay + by)) / 6;
    xx += (cross * (ax * ax + ax * bx + bx * bx)) / 12;
    yy += (cross * (ay * ay + ay * by + by * by)) / 12;
    xy += (cross * (ax * (2 * ay + by) + bx * (ay + 2 * by))) / 24;
    ax = bx;
    ay = by;
  }
  const sign = area < 0 ? -1 : 1;
  return {
    originX,
    originY,
    area: sign * area,
    x: sign * x,
    y: sign * y,
    xx: sign * xx,
    yy: sign * yy,
    xy: sign * xy,
  };
}

function added(sum: Moments, ring: Moments, sign: 1 | -1): Moments {
  return {
    originX: 0,
    originY: 0,
    area: sum.area + sign * ring.area,
    x: sum.x + sign * ring.x,
    y: sum.y + sign * ring.y,
    xx: sum.xx + sign * ring.xx,
    yy: sum.yy + sign * ring.yy,
    xy: sum.xy + sign * ring.xy,
  };
}

function farthestCorner({ rings }: Outline, x: number, y: number): number {
  const ring = rings[0] ?? new Float64Array();
  let farthest = 0;
  for (let index = 0; index < ring.length; index += 2) {
    farthest = Math.max(
      farthest,
      Math.hypot((ring[index] as number) - x, (ring[index + 1] as number) - y),
    );
  }
  return farthest;
}
