/** Bringing edges or middles of several objects into one line. */
import { type Bounds, joinBounds } from "../geometry/bounds.ts";
import type { Point } from "../geometry/point.ts";
import { shiftOnSheet, turnedBounds } from "../geometry/turned-bounds.ts";
import { type DrawnObject, drawnObjects, shiftedEach } from "./drawn-objects.ts";
import type { Edit } from "./edit.ts";

/** Left to right across, near to far along: the sides of a bed seen from its near end. */
export const alignSides = ["left", "middle", "right", "near", "halfway", "far"] as const;
export type AlignSide = (typeof alignSides)[number];

/**
 * `first`: in the directions of the object named first, to its sides; it stays where it is.
 * `sheet`: in the sheet's directions, to the outermost sides of all.
 */
export type AlignFrame = "first" | "sheet";

/** Turn of the frame's directions, degrees clockwise. */
export function frameTurnDeg(objects: readonly DrawnObject[], frame: AlignFrame): number {
  const [first] = objects;
  return frame === "first" && first?.outline.shape === "rectangle" ? first.outline.turnDeg : 0;
}

/** Where a side lies in the frame, metres. */
function sideOf({ minX, minY, maxX, maxY }: Bounds, side: AlignSide): number {
  switch (side) {
    case "left":
      return minX;
    case "middle":
      return (minX + maxX) / 2;
    case "right":
      return maxX;
    case "near":
      return minY;
    case "halfway":
      return (minY + maxY) / 2;
    case "far":
      return maxY;
  }
}

function isAcross(side: AlignSide): boolean {
  return side === "left" || side === "middle" || side === "right";
}

/** Moves objects so that one side or the middle of each lies in one line. What is locked stays. */
export function alignObjects(
  layoutId: string,
  ids: readonly string[],
  side: AlignSide,
  frame: AlignFrame,
  title: string,
): Edit {
  return {
    title,
    apply: (plan) => {
      const layout = plan.layouts.find(({ id }) => id === layoutId);
      if (!layout) return plan;
      const objects = drawnObjects(plan, layout, ids);
      const turnDeg = frameTurnDeg(objects, frame);
      const bounds = objects.map(({ outline }) => turnedBounds(outline, turnDeg));
      const target = frame === "first" ? bounds[0] : joinBounds(bounds);
      if (!target) return plan;
      const line = sideOf(target, side);
      const shifts = new Map<string, Point>();
      objects.forEach(({ id, isLocked }, index) => {
        const own = bounds[index];
        if (isLocked || !own) return;
        const off = line - sideOf(own, side);
        shifts.set(
          id,
          isAcross(side) ? shiftOnSheet(off, 0, turnDeg) : shiftOnSheet(0, off, turnDeg),
        );
      });
      return shiftedEach(plan, layoutId, shifts, title);
    },
  };
}
