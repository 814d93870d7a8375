/** Two fingers pan and zoom together; they never move what they lie on. */
import type { Point } from "../../core/geometry/point.ts";
import { useView } from "../scene/view-store.ts";

interface TwoFingers {
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

interface FingerTracker {
  /** A finger is down; true when it is the second one: from then on nothing is dragged. */
  readonly add: (id: number, px: Point) => boolean;
  readonly lift: (id: number) => void;
  /** A finger moves; true when two of them move the view. */
  readonly move: (id: number, px: Point) => boolean;
}

export function fingerTracker(): FingerTracker {
  const fingers = new Map<number, Point>();
  let pinch: TwoFingers | null = null;
  return {
    add: (id, px) => {
      fingers.set(id, px);
      pinch = twoFingers(fingers.values());
      return pinch !== null;
    },
    lift: (id) => {
      fingers.delete(id);
      pinch = twoFingers(fingers.values());
    },
    move: (id, px) => {
      if (!fingers.has(id)) return false;
      fingers.set(id, px);
      const next = twoFingers(fingers.values());
      if (!pinch || !next) return false;
      followFingers(pinch, next);
      pinch = next;
      return true;
    },
  };
}

/** The view follows the fingers from where they were to where they are. */
function followFingers(before: TwoFingers, after: TwoFingers): void {
  const { pan, zoom } = useView.getState();
  pan(after.middle.x - before.middle.x, after.middle.y - before.middle.y);
  zoom(after.middle, after.apartPx / before.apartPx);
}
