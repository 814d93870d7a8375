/** An arrow from where something lay to where it lies. */
import { type Mark, type PagePoint, line } from "../page/scene.ts";

/** Nearer than this there is no room for an arrow, mm. */
const LEAST_MM = 10;
/** It ends so far before the middle, where the code stands. */
const SHORT_MM = 6;
const BARB_MM = 2;

export function moveMarks(from: PagePoint, to: PagePoint): readonly Mark[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  if (length < LEAST_MM) return [];
  const [dx, dy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const tip = { x: to.x - dx * SHORT_MM, y: to.y - dy * SHORT_MM };
  const barb = (side: number): PagePoint => ({
    x: tip.x - dx * BARB_MM + side * dy * BARB_MM * 0.5,
    y: tip.y - dy * BARB_MM - side * dx * BARB_MM * 0.5,
  });
  return [line([from, tip], { widthMm: 0.3 }), line([barb(1), tip, barb(-1)], { widthMm: 0.4 })];
}
