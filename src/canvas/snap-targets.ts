/** What an object snaps to: its bed, and the edges of neighbours that are turned the same way. */
import { boundsGap } from "../core/geometry/bounds.ts";
import { shapeCorners } from "../core/geometry/outline.ts";
import type { Bed, Shape } from "../core/model/plan.ts";
import { type SheetItem, type SheetItems, outlineFor } from "./sheet-items.ts";
import { type Frame, type SnapLine, type SnapLines, boundsInFrame } from "./snap.ts";

/** Neighbours further away than this are not snapped to, metres. */
const NEIGHBOUR_M = 12;
/** Turns that differ by less count as the same, degrees. */
const TURN_TOLERANCE = 0.05;

/** Whether a shape's edges run along the frame's directions. */
export function isAlongFrame(shape: Shape, frame: Frame): boolean {
  if (shape.shape !== "rectangle") return false;
  const off = Math.abs(shape.turnDeg - frame.turnDeg) % 90;
  return Math.min(off, 90 - off) < TURN_TOLERANCE;
}

/** Lines of a box: its edges, and for a bed its middle. */
function linesOf(shape: Shape, frame: Frame, name: string, hasMiddle: boolean): SnapLines {
  const box = boundsInFrame(frame, shapeCorners(shape));
  const line = (at: number, reach: readonly [number, number], isMiddle = false): SnapLine => ({
    at,
    reach,
    label: isMiddle ? `middle of ${name}` : `edge of ${name}`,
    isMiddle,
  });
  const alongY = [box.minY, box.maxY] as const;
  const alongX = [box.minX, box.maxX] as const;
  const isTall = box.maxY - box.minY >= box.maxX - box.minX;
  return {
    x: [
      line(box.minX, alongY),
      line(box.maxX, alongY),
      ...(hasMiddle && isTall ? [line((box.minX + box.maxX) / 2, alongY, true)] : []),
    ],
    y: [
      line(box.minY, alongX),
      line(box.maxY, alongX),
      ...(hasMiddle && !isTall ? [line((box.minY + box.maxY) / 2, alongX, true)] : []),
    ],
  };
}

export function joinLines(all: readonly SnapLines[]): SnapLines {
  return { x: all.flatMap(({ x }) => x), y: all.flatMap(({ y }) => y) };
}

/**
 * Lines for an object of the frame's turn.
 * @param shape where it lies now
 * @param moving ids that move with it
 * @param bed the bed it lies over, for a planting
 */
export function snapTargets(
  items: SheetItems,
  frame: Frame,
  what: SheetItem["what"],
  shape: Shape,
  moving: ReadonlySet<string>,
  bed: Bed | undefined,
): SnapLines {
  const own = outlineFor(shape).bounds;
  const neighbours = items.list.filter(
    (item) =>
      !moving.has(item.id) &&
      item.id !== bed?.id &&
      isNeighbour(item, what, bed) &&
      isAlongFrame(item.shape, frame) &&
      boundsGap(own, item.outline.bounds) <= NEIGHBOUR_M,
  );
  return joinLines([
    ...(bed && isAlongFrame(bed.outline, frame)
      ? [linesOf(bed.outline, frame, `bed ${bed.code}`, true)]
      : []),
    ...neighbours.map((item) => linesOf(item.shape, frame, nameOf(item), false)),
  ]);
}

function isNeighbour(item: SheetItem, what: SheetItem["what"], bed: Bed | undefined): boolean {
  if (item.what === "planting") {
    return what === "planting" && (bed === undefined || item.planting.bed === bed.id);
  }
  return item.what === "bed" && (what !== "planting" || bed === undefined);
}

function nameOf(item: SheetItem): string {
  switch (item.what) {
    case "planting":
      return item.planting.code;
    case "bed":
      return `bed ${item.bed.code}`;
    case "surrounding":
      return item.surrounding.label;
  }
}
