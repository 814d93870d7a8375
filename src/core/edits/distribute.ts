/** Equal gaps between the facing edges of several objects, their order kept. */
import type { Bounds } from "../geometry/bounds.ts";
import type { Point } from "../geometry/point.ts";
import { shiftOnSheet, turnedBounds } from "../geometry/turned-bounds.ts";
import type { Layout, Plan } from "../model/plan.ts";
import { type AlignFrame, frameTurnDeg } from "./align.ts";
import { type DrawnObject, drawnObjects, shiftedEach } from "./drawn-objects.ts";
import type { Edit } from "./edit.ts";
import * as steps from "../words/shelf-step-words.ts";

export type SpreadAxis = "across" | "along";

interface Placed {
  readonly id: string;
  /** Near and far edge along the axis, metres in the frame. */
  readonly from: number;
  readonly to: number;
}

/** The objects along an axis of the frame, the lowest edge first. */
function inOrder(
  objects: readonly DrawnObject[],
  axis: SpreadAxis,
  turnDeg: number,
): readonly Placed[] {
  const ends = ({ minX, minY, maxX, maxY }: Bounds): Omit<Placed, "id"> =>
    axis === "across" ? { from: minX, to: maxX } : { from: minY, to: maxY };
  return objects
    .map(({ id, outline }) => ({ id, ...ends(turnedBounds(outline, turnDeg)) }))
    .sort((a, b) => a.from + a.to - (b.from + b.to));
}

/** The gap that equal spacing gives between the outermost two, which stay; may be negative. Metres. */
function equalGap(placed: readonly Placed[]): number {
  const first = placed[0];
  const last = placed.at(-1);
  if (!first || !last || placed.length < 2) return 0;
  const filled = placed.reduce((sum, { from, to }) => sum + to - from, 0);
  return (last.to - first.from - filled) / (placed.length - 1);
}

/** How objects are spaced. */
export interface Spread {
  readonly axis: SpreadAxis;
  readonly frame: AlignFrame;
  /**
   * Gap from edge to edge, metres: the first stays and the others follow; null shares out the room
   * between the outermost two, which stay.
   */
  readonly gapM: number | null;
}

/** Why the objects cannot be spaced, in words; null when they can. */
export function spreadProblem(
  plan: Plan,
  layout: Layout,
  ids: readonly string[],
  { axis, frame, gapM }: Spread,
): string | null {
  const objects = drawnObjects(plan, layout, ids);
  const least = gapM === null ? 3 : 2;
  if (objects.length < least) return steps.tooFew(least);
  const locked = objects.find(({ isLocked }) => isLocked);
  if (locked) return steps.spacingLocked(locked.name);
  if (gapM !== null) return null;
  const gap = equalGap(inOrder(objects, axis, frameTurnDeg(objects, frame)));
  return gap < -1e-9 ? steps.noRoom : null;
}

/** Spaces objects evenly along one direction of the frame. */
export function distributeObjects(
  layoutId: string,
  ids: readonly string[],
  spread: Spread,
  title: string,
): Edit {
  const { axis, frame, gapM } = spread;
  return {
    title,
    apply: (plan) => {
      const layout = plan.layouts.find(({ id }) => id === layoutId);
      if (!layout || spreadProblem(plan, layout, ids, spread) !== null) return plan;
      const objects = drawnObjects(plan, layout, ids);
      const turnDeg = frameTurnDeg(objects, frame);
      const placed = inOrder(objects, axis, turnDeg);
      const gap = gapM ?? equalGap(placed);
      const shifts = new Map<string, Point>();
      let edge = placed[0]?.from ?? 0;
      for (const { id, from, to } of placed) {
        const off = edge - from;
        shifts.set(
          id,
          axis === "across" ? shiftOnSheet(off, 0, turnDeg) : shiftOnSheet(0, off, turnDeg),
        );
        edge += to - from + gap;
      }
      return shiftedEach(plan, layoutId, shifts, title);
    },
  };
}
