/** Which way words run on what they name, never upside down, and where ground is widest. */
import { type Outline, outlineContains } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import type { RectangleShape } from "../../core/model/plan.ts";

/** Reading direction along a line: the same line, turned so that words stand upright. */
export function uprightAngle(angle: number): number {
  const half = ((angle % Math.PI) + Math.PI) % Math.PI;
  // A hair off plumb still reads upward, as all beside it does.
  return half >= Math.PI / 2 - 1e-9 ? half - Math.PI : half;
}

/** Directions of a rectangle's width and length on the screen, radians clockwise from the right. */
export function axesOf({ turnDeg }: RectangleShape): {
  readonly width: number;
  readonly length: number;
} {
  const width = (turnDeg * Math.PI) / 180;
  return { width, length: width - Math.PI / 2 };
}

/** The widest stretch of ground along a level line, metres. */
export function widestCut(
  outline: Outline,
  y: number,
): { readonly middle: Point; readonly widthM: number } | null {
  const crossings: number[] = [];
  for (const ring of outline.rings) {
    for (let index = 0; index < ring.length; index += 2) {
      const next = (index + 2) % ring.length;
      const [ax, ay] = [ring[index] as number, ring[index + 1] as number];
      const [bx, by] = [ring[next] as number, ring[next + 1] as number];
      if (ay > y !== by > y) crossings.push(ax + ((y - ay) / (by - ay)) * (bx - ax));
    }
  }
  crossings.sort((a, b) => a - b);
  let best: { readonly middle: Point; readonly widthM: number } | null = null;
  for (let index = 1; index < crossings.length; index += 1) {
    const [left, right] = [crossings[index - 1] as number, crossings[index] as number];
    const middle = { x: (left + right) / 2, y };
    const widthM = right - left;
    if (widthM > (best?.widthM ?? 0) && outlineContains(outline, middle.x, middle.y)) {
      best = { middle, widthM };
    }
  }
  return best;
}
