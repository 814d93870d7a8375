/** How the next press of an outline is meant: a corner, a place of a curve, the middle or rim of a round. */
import { arcThrough } from "../../core/geometry/arc.ts";
import { type Point, pointDistance } from "../../core/geometry/point.ts";
import { roundShape } from "../../core/geometry/round.ts";

export type Shaping =
  | { readonly kind: "straight" }
  /** A curve from the last corner: the place it passes through, then its end. */
  | { readonly kind: "via" }
  | { readonly kind: "end"; readonly via: Point }
  /** A whole circle, in place of corners. */
  | { readonly kind: "middle" }
  | { readonly kind: "rim"; readonly middle: Point };

export const STRAIGHT: Shaping = { kind: "straight" };

/** Corners of a circle about a middle. */
export function roundCorners(middle: Point, diameterM: number): readonly Point[] {
  return roundShape({ ...middle, diameterM }).corners.map(([x, y]) => ({ x, y }));
}

/** What a press at a place would draw, from the last corner on; nothing where it is a straight side. */
export function shapedPath(shaping: Shaping, last: Point | undefined, at: Point): readonly Point[] {
  if (shaping.kind === "end" && last) return arcThrough(last, shaping.via, at).corners;
  if (shaping.kind !== "rim") return [];
  const diameterM = 2 * pointDistance(shaping.middle, at);
  const rim = diameterM > 0 ? roundCorners(shaping.middle, diameterM) : [];
  return [...rim, ...rim.slice(0, 1)];
}
