/** From the ground to one map sheet: the only place where sheet metres become page millimetres. */
import type { Bounds } from "../geometry/bounds.ts";
import type { Outline } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Box, PagePoint } from "./scene.ts";

export interface SheetView {
  readonly window: Bounds;
  /** The window on the page. */
  readonly box: Box;
  readonly toPage: (place: Point) => PagePoint;
  readonly ringsOf: (outline: Outline) => readonly (readonly PagePoint[])[];
}

export function sheetView(window: Bounds, box: Box, ratio: number): SheetView {
  const mmPerMetre = 1000 / ratio;
  const toPage = (place: Point): PagePoint => ({
    x: box.left + (place.x - window.minX) * mmPerMetre,
    y: box.top + (window.maxY - place.y) * mmPerMetre,
  });
  return {
    window,
    box,
    toPage,
    ringsOf: (outline) =>
      outline.rings.map((ring) =>
        Array.from({ length: ring.length / 2 }, (_, index) =>
          toPage({ x: ring[index * 2] as number, y: ring[index * 2 + 1] as number }),
        ),
      ),
  };
}

/** The part of a line inside a box (Liang and Barsky 1984), or null when none is. */
export function clipLine(
  from: PagePoint,
  to: PagePoint,
  box: Box,
): readonly [PagePoint, PagePoint] | null {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  let [start, end] = [0, 1];
  for (const [step, room] of [
    [-dx, from.x - box.left],
    [dx, box.left + box.width - from.x],
    [-dy, from.y - box.top],
    [dy, box.top + box.height - from.y],
  ] as const) {
    if (step === 0) {
      if (room < 0) return null;
    } else if (step < 0) start = Math.max(start, room / step);
    else end = Math.min(end, room / step);
  }
  if (start > end) return null;
  const at = (share: number) => ({ x: from.x + dx * share, y: from.y + dy * share });
  return [at(start), at(end)];
}
