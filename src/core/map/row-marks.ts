/** Short ticks at both ends of a planting, one for each row, and a dot where row 1 begins. */
import type { AreaShape } from "../model/plan.ts";
import { type Mark, type PagePoint, type Pen, area, line } from "../page/scene.ts";

/** At most so long, and closer together than this they would run into each other; mm. */
const TICK_MM = 2;
const CLOSEST_MM = 0.8;
/** In a shorter planting the ticks would leave no hatch to see. */
const SHORTEST_MM = 12;
const INSET_MM = 0.5;
/** Of a planting's end, the ticks take so much of the hatch. */
export const ROW_BAND_MM = INSET_MM + TICK_MM + 0.2;
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
  shortestMm: number = SHORTEST_MM,
): readonly Mark[] {
  const [nearLeft, farLeft, , nearRight] = ring;
  if (shape.shape !== "rectangle" || !rows || !nearLeft || !farLeft || !nearRight) return [];
  const width = Math.hypot(nearRight.x - nearLeft.x, nearRight.y - nearLeft.y);
  const length = Math.hypot(farLeft.x - nearLeft.x, farLeft.y - nearLeft.y);
  if (width / rows < CLOSEST_MM || length < shortestMm) return [];
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
  const depth = ROW_BAND_MM;
  return [
    clear(0.3, depth),
    clear(length - depth, length - 0.3),
    ...ticks,
    { kind: "circle", centre, radiusMm: DOT_MM, fill: 0, pen: null },
  ];
}

const ARROW_MM = { least: 9, most: 22, barb: 1.3 } as const;

/** From the dot of row 1 along that row: which way it runs. Nothing where there is no dot. */
export function rowOneArrow(
  shape: AreaShape,
  rows: number | undefined,
  ring: readonly PagePoint[],
): readonly Mark[] {
  const [nearLeft, farLeft, , nearRight] = ring;
  if (rowMarks(shape, rows, ring).length === 0 || !rows) return [];
  if (!nearLeft || !farLeft || !nearRight) return [];
  const length = Math.hypot(farLeft.x - nearLeft.x, farLeft.y - nearLeft.y);
  const reach = Math.min(length * 0.3, ARROW_MM.most);
  if (reach < ARROW_MM.least) return [];
  const along = { x: (farLeft.x - nearLeft.x) / length, y: (farLeft.y - nearLeft.y) / length };
  const share = 0.5 / rows;
  const start = {
    x: nearLeft.x + (nearRight.x - nearLeft.x) * share,
    y: nearLeft.y + (nearRight.y - nearLeft.y) * share,
  };
  const place = (forward: number, sideways: number): PagePoint => ({
    x: start.x + along.x * forward - along.y * sideways,
    y: start.y + along.y * forward + along.x * sideways,
  });
  const tip = place(reach, 0);
  const { barb } = ARROW_MM;
  return [
    line([place(INSET_MM + DOT_MM, 0), tip], { widthMm: 0.4 }),
    area([tip, place(reach - 2 * barb, barb), place(reach - 2 * barb, -barb)], 0, null),
  ];
}
