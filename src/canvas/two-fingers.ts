/** Two fingers pan and zoom together; they never move what they lie on. */
import type { Point } from "../core/geometry/point.ts";
import { useView } from "./view-store.ts";

export interface TwoFingers {
  readonly middle: Point;
  readonly apartPx: number;
}

/** The first two of the fingers on the sheet; null with fewer. */
export function twoFingers(fingers: Iterable<Point>): TwoFingers | null {
  const [a, b] = fingers;
  if (!a || !b) return null;
  return {
    middle: { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 },
    apartPx: Math.max(1, Math.hypot(b.x - a.x, b.y - a.y)),
  };
}

/** The view follows the fingers from where they were to where they are. */
export function followFingers(before: TwoFingers, after: TwoFingers): void {
  const { pan, zoom } = useView.getState();
  pan(after.middle.x - before.middle.x, after.middle.y - before.middle.y);
  zoom(after.middle, after.apartPx / before.apartPx);
}
