/**
 * What the ground of a plan needs drawn beside this season's plantings: crops of earlier years,
 * marks of diseases, and plantings that have one ground in turn. Fetched when a plan has such.
 */
import type { CropBook } from "../../core/kinds/crop-book.ts";
import type { Plan } from "../../core/model/plan.ts";
import type { LabelBox } from "../../core/page/label-box.ts";
import type { Brush } from "../draw/brush.ts";
import { type Box, drawWords, wordsWidth } from "../draw/draw-text.ts";
import type { SheetItem } from "../scene/sheet-items.ts";
import { drawEarlierCrops } from "./draw-earlier-crops.ts";
import { drawGroundMarks } from "./draw-ground-marks.ts";
import { drawGroundOfYear } from "./draw-ground-of-year.ts";
import { type GroundNamed, planGroundLabels } from "./ground-labels.ts";
import { sectorOf } from "./shared-ground.ts";

/** What the words of the ground keep off. */
export interface AboveGround {
  /** What of this season is drawn. */
  readonly items: readonly SheetItem[];
  /** Its words, which have their places. */
  readonly words: readonly LabelBox[];
  readonly furniture: readonly Box[];
}

interface Ground {
  readonly plan: Plan;
  readonly book: CropBook;
  /** The one shown in the place of this season; null: this season's, all before quiet. */
  readonly year: number | null;
}

export interface GroundPainter {
  /** @param above null: without words, for a picture that is only moved */
  readonly draw: (brush: Brush, ground: Ground, above: AboveGround | null) => void;
  readonly sectorOf: typeof sectorOf;
}

export const groundPainter: GroundPainter = {
  draw: (brush, { plan, book, year }, above) => {
    const crops =
      year === null
        ? drawEarlierCrops(brush, plan, book)
        : drawGroundOfYear(brush, plan, book, year);
    const marks = drawGroundMarks(brush, plan);
    if (above) nameGround(brush, marks, crops, above);
  },
  sectorOf,
};

/** Diseases find their places first: they are never left without a name. */
function nameGround(
  brush: Brush,
  marks: readonly GroundNamed[],
  crops: readonly GroundNamed[],
  { items, words, furniture }: AboveGround,
): void {
  const { caution, inkSoft } = brush.colours;
  const labels = planGroundLabels(brush.view, brush, [...marks, ...crops], {
    widthPx: (text) => wordsWidth(brush, "note", text),
    items,
    taken: words,
    furniture,
  });
  for (const [index, found] of labels.entries()) {
    if (!found) continue;
    const { centre, turnDeg } = found.label;
    const colour = index < marks.length ? caution : inkSoft;
    const said = { text: found.text, face: "note", colour, hasHalo: true } as const;
    drawWords(brush, centre, said, (turnDeg * Math.PI) / 180);
  }
}
