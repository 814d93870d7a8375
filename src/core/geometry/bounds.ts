import type { Point } from "./point.ts";

/** An upright box, metres. */
export interface Bounds {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Bounds of flat coordinates x0, y0, x1, y1, ...; at least one point. */
export function boundsOfCoordinates(coordinates: Float64Array): Bounds {
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  for (let index = 0; index < coordinates.length; index += 2) {
    const x = coordinates[index] as number;
    const y = coordinates[index + 1] as number;
    if (x < minX) minX = x;
    if (x > maxX) maxX = x;
    if (y < minY) minY = y;
    if (y > maxY) maxY = y;
  }
  return { minX, minY, maxX, maxY };
}

/** Smallest box around all boxes; null when there are none. */
export function joinBounds(all: Iterable<Bounds>): Bounds | null {
  let joined: Bounds | null = null;
  for (const bounds of all) {
    joined =
      joined === null
        ? bounds
        : {
            minX: Math.min(joined.minX, bounds.minX),
            minY: Math.min(joined.minY, bounds.minY),
            maxX: Math.max(joined.maxX, bounds.maxX),
            maxY: Math.max(joined.maxY, bounds.maxY),
          };
  }
  return joined;
}

/** The box grown by a margin on every side. */
export function growBounds(bounds: Bounds, marginM: number): Bounds {
  return {
    minX: bounds.minX - marginM,
    minY: bounds.minY - marginM,
    maxX: bounds.maxX + marginM,
    maxY: bounds.maxY + marginM,
  };
}

export function boundsCentre(bounds: Bounds): Point {
  return { x: (bounds.minX + bounds.maxX) / 2, y: (bounds.minY + bounds.maxY) / 2 };
}

/** Shortest distance between two boxes; 0 when they touch. A lower bound for what lies inside. */
export function boundsGap(a: Bounds, b: Bounds): number {
  const dx = a.minX > b.maxX ? a.minX - b.maxX : b.minX > a.maxX ? b.minX - a.maxX : 0;
  const dy = a.minY > b.maxY ? a.minY - b.maxY : b.minY > a.maxY ? b.minY - a.maxY : 0;
  return Math.sqrt(dx * dx + dy * dy);
}
