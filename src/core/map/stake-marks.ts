/** The stakes from which the beds are measured. */
import { TYPE_PT } from "./map-style.ts";
import { type Mark, type PagePoint, capHeight, text } from "../page/scene.ts";

/** A stake as on the map and the sketch: a black dot in a ring, and its letter. */
export function stakeMarks(letter: string, centre: PagePoint): readonly Mark[] {
  return [
    { kind: "circle", centre, radiusMm: 1.6, fill: 1, pen: { widthMm: 0.35 } },
    { kind: "circle", centre, radiusMm: 0.6, fill: 0, pen: null },
    text({ x: centre.x + 2.6, y: centre.y + capHeight(TYPE_PT.code) / 2 }, letter, TYPE_PT.code, {
      isBold: true,
    }),
  ];
}
