/** Where a code stands on what it names, and which way it runs: never upside down. */
import { type Outline, outlineContains, shapeCentre } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import type { RectangleShape, Shape } from "../../core/model/plan.ts";
import { type View, toPx, toSheet } from "../scene/viewport.ts";

export interface LabelPlace {
  /** Middle of the words, pixels. */
  readonly at: Point;
  /** Turn of the words clockwise from reading straight, radians: -π/2 (upward) to below π/2. */
  readonly angle: number;
}

/** Words may reach over the edges of their ground by this much in all, pixels. */
const OVERHANG_PX = 3;

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

/** The place for words of a size on an area, or null when they do not fit. */
export function labelPlace(
  shape: Shape,
  outline: Outline,
  view: View,
  words: { readonly widthPx: number; readonly heightPx: number },
): LabelPlace | null {
  if (shape.shape === "rectangle") {
    const width = shape.widthM * view.scale;
    const length = shape.lengthM * view.scale;
    if (Math.min(width, length) + OVERHANG_PX < words.heightPx) return null;
    const axes = axesOf(shape);
    const along = [
      { angle: uprightAngle(axes.width), runPx: width },
      { angle: uprightAngle(axes.length), runPx: length },
    ].sort((a, b) => Math.abs(a.angle) - Math.abs(b.angle));
    const fitting = along.find(({ runPx }) => runPx + OVERHANG_PX >= words.widthPx);
    return fitting ? { at: toPx(view, shapeCentre(shape)), angle: fitting.angle } : null;
  }
  const cut = widestCut(outline, (outline.bounds.minY + outline.bounds.maxY) / 2);
  if (!cut) return null;
  const height = (outline.bounds.maxY - outline.bounds.minY) * view.scale;
  if (
    height + OVERHANG_PX < words.heightPx ||
    cut.widthM * view.scale + OVERHANG_PX < words.widthPx
  )
    return null;
  return { at: toPx(view, cut.middle), angle: 0 };
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

/** Over an edge that is long and lies level, outside and along it; of two alike the higher one. */
export function sideLabelPlace(outline: Outline, view: View, gapPx: number): SideLabel {
  const ring = outline.rings[0] ?? new Float64Array(2);
  const corner = (index: number) => {
    const x = ring[index % ring.length] as number;
    return toPx(view, { x, y: ring[(index + 1) % ring.length] as number });
  };
  const edges = Array.from({ length: ring.length / 2 }, (_, index) => {
    const [from, to] = [corner(index * 2), corner(index * 2 + 2)];
    const runPx = Math.hypot(to.x - from.x, to.y - from.y);
    const at = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
    const angle = uprightAngle(Math.atan2(to.y - from.y, to.x - from.x));
    // Words that run across the screen are read first; a little height decides between two alike.
    return { at, angle, runPx, worth: runPx * (0.25 + Math.cos(angle) * 0.75) - at.y * 0.1 };
  });
  const best = edges.reduce((most, edge) => (edge.worth > most.worth ? edge : most));
  const outside = [-gapPx, gapPx].map((by) => onward(best.at, best.angle + Math.PI / 2, by));
  const at = outside.find((place) => {
    const { x, y } = toSheet(view, place);
    return !outlineContains(outline, x, y);
  });
  return { ...best, at: at ?? best.at };
}

export interface SideLabel extends LabelPlace {
  /** Length of the edge, pixels. */
  readonly runPx: number;
}

/** A place some pixels along a direction on the screen. */
function onward(from: Point, angle: number, byPx: number): Point {
  return { x: from.x + Math.cos(angle) * byPx, y: from.y + Math.sin(angle) * byPx };
}
