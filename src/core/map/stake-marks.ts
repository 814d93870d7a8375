/** The stakes from which the beds are measured. */
import { type LabelBox, labelBox } from "../page/label-box.ts";
import { TYPE_PT } from "./map-style.ts";
import { type Mark, type PagePoint, capHeight, text } from "../page/scene.ts";

/** Radius of the ring round a stake, mm. */
export const STAKE_RING_MM = 1.6;

/** What a stake with its letter beside it takes on the page. */
export function stakePlace({ x, y }: PagePoint): LabelBox {
  return labelBox({ x: x + 1.6, y }, 7.4, 4, 0);
}

/** A stake as on the map and the sketch: a black dot in a ring, and its letter. */
export function stakeMarks(
  letter: string,
  centre: PagePoint,
  place: "beside" | "below" = "beside",
): readonly Mark[] {
  const cap = capHeight(TYPE_PT.code);
  const at =
    place === "beside"
      ? { x: centre.x + 2.6, y: centre.y + cap / 2 }
      : { x: centre.x, y: centre.y + STAKE_RING_MM + 0.9 + cap };
  return [
    { kind: "circle", centre, radiusMm: STAKE_RING_MM, fill: 1, pen: { widthMm: 0.35 } },
    { kind: "circle", centre, radiusMm: 0.6, fill: 0, pen: null },
    text(at, letter, TYPE_PT.code, {
      isBold: true,
      align: place === "beside" ? "left" : "middle",
    }),
  ];
}
