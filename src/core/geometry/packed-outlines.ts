/** Outlines in three flat arrays, which go to another thread at once however many they are. */
import { boundsOfCoordinates } from "./bounds.ts";
import type { Outline } from "./outline.ts";

export interface PackedOutlines {
  /** x0, y0, x1, y1, ... of all rings, one after the other, metres. */
  readonly coordinates: Float64Array;
  /** Corners of each ring. */
  readonly corners: Uint32Array;
  /** Rings of each outline; with the sign of a minus where it has no inside. */
  readonly rings: Int32Array;
}

export function packOutlines(outlines: readonly Outline[]): PackedOutlines {
  const rings = outlines.flatMap((outline) => outline.rings);
  const coordinates = new Float64Array(rings.reduce((sum, ring) => sum + ring.length, 0));
  let at = 0;
  for (const ring of rings) {
    coordinates.set(ring, at);
    at += ring.length;
  }
  return {
    coordinates,
    corners: Uint32Array.from(rings, (ring) => ring.length / 2),
    rings: Int32Array.from(outlines, ({ hasInside, rings: own }) =>
      hasInside ? own.length : -own.length,
    ),
  };
}

/** The same outlines in the same order. */
export function unpackOutlines({ coordinates, corners, rings }: PackedOutlines): Outline[] {
  let [ring, at] = [0, 0];
  return Array.from(rings, (count) => {
    const own = Array.from({ length: Math.abs(count) }, () => {
      const end = at + (corners[ring] ?? 0) * 2;
      const part = coordinates.subarray(at, end);
      ring += 1;
      at = end;
      return part;
    });
    return {
      hasInside: count > 0,
      rings: own,
      bounds: boundsOfCoordinates(own[0] ?? new Float64Array()),
    };
  });
}

/** The memory of the arrays, to be handed over instead of copied. */
export function buffersOf({ coordinates, corners, rings }: PackedOutlines): ArrayBufferLike[] {
  return [coordinates.buffer, corners.buffer, rings.buffer];
}
