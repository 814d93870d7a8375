/** Short ticks at both ends of a planting, one for each row, and a dot where row 1 begins. */
import type { AreaShape } from "../model/plan.ts";
import { type Mark, type PagePoint, type Pen, area, line } from "../page/scene.ts";

/** At most so long, and closer together than this they would run into each other; mm. */
const TICK_MM = 2;
const CLOSEST_MM = 0.8;
const INSET_MM = 0.5;
const ROW_PEN: Pen = { widthMm: 0.3 };
const DOT_MM = 0.7;

/**
 * @param ring corners on the page of a rectangle: near left, far left, far right, near right
 * @returns nothing where rows are not known or the planting is drawn too small
 */
export function rowMarks(
  shape: AreaShape,
  rows: number | undefined,
  ring: readonly PagePoint[],
): readonly Mark[] {
  const [nearLeft, farLeft, , nearRight] = ring;
  if (shape.shape !== "rectangle" || !rows || !nearLeft || !farLeft || !nearRight) return [];
  const width = Math.hypot(nearRight.x - nearLeft.x, nearRight.y - nearLeft.y);
  const length = Math.hypot(farLeft.x - nearLeft.x, farLeft.y - nearLeft.y);
  if (width / rows < CLOSEST_MM || length < 4 * TICK_MM) return [];
  const place = (across: number, along: number): PagePoint => ({
    x:
      nearLeft.x +
      ((nearRight.x - nearLeft.x) * across) / width +
      ((farLeft.x - nearLeft.x) * along) / length,
    y:
      nearLeft.y +
      ((nearRight.y - nearLeft.y) * across) / width +
      ((farLeft.y - nearLeft.y) * along) / length,
  });
  const ticks = Array.from({ length: rows }, (_, row) => {
    const across = ((row + 0.5) * width) / rows;
    const tick = (from: number, to: number) =>
      line([place(across, from), place(across, to)], ROW_PEN);
    return [
      tick(INSET_MM, INSET_MM + TICK_MM),
      tick(length - INSET_MM - TICK_MM, length - INSET_MM),
    ];
  }).flat();
  const centre = place(width / rows / 2, INSET_MM + DOT_MM / 2);
  // The hatch would hide the ticks.
  const clear = (from: number, to: number) =>
    area(
      [place(0.3, from), place(0.3, to), place(width - 0.3, to), place(width - 0.3, from)],
      1,
      null,
    );
  const depth = INSET_MM + TICK_MM + 0.2;
  return [
    clear(0.3, depth),
    clear(length - depth, length - 0.3),
    ...ticks,
    { kind: "circle", centre, radiusMm: DOT_MM, fill: 0, pen: null },
  ];
}
