/** Where the sides of an outline that is being drawn cross each other. */
import type { Point } from "../../core/geometry/point.ts";

export type DrawnSide = readonly [Point, Point];

export interface Crossing {
  readonly sides: readonly [DrawnSide, DrawnSide];
  readonly at: Point;
}

/** Every pair of sides that cross or touch, neighbours left out: those meet at their corner. */
export function outlineCrossings(corners: readonly Point[]): readonly Crossing[] {
  const sides = corners.slice(1).map((to, index): DrawnSide => [corners[index] ?? to, to]);
  return sides.flatMap((side, index) =>
    sides.slice(0, Math.max(0, index - 1)).flatMap((earlier): readonly Crossing[] => {
      const at = meeting(earlier, side);
      return at ? [{ sides: [earlier, side], at }] : [];
    }),
  );
}

function meeting([a, b]: DrawnSide, [c, d]: DrawnSide): Point | null {
  const side = (p: Point, q: Point, r: Point) =>
    (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  const [abc, abd, cda, cdb] = [side(a, b, c), side(a, b, d), side(c, d, a), side(c, d, b)];
  if (Math.sign(abc) === Math.sign(abd) || Math.sign(cda) === Math.sign(cdb)) return null;
  const share = cda / (cda - cdb);
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}
