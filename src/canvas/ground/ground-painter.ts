/**
 * What the ground of a plan needs drawn beside this season's plantings: crops of earlier years,
 * marks of diseases, and plantings that have one ground in turn. Fetched when a plan has such.
 */
import type { CropBook } from "../../core/kinds/crop-book.ts";
import type { Plan } from "../../core/model/plan.ts";
import type { SheetItems } from "../scene/sheet-items.ts";
import type { Brush } from "../draw/brush.ts";
import { drawEarlierCrops } from "./draw-earlier-crops.ts";
import { drawGroundMarks } from "./draw-ground-marks.ts";
import { drawGroundOfYear } from "./draw-ground-of-year.ts";
import { sectorOf } from "./shared-ground.ts";

export interface GroundPainter {
  /** @param year the one shown in the place of this season; null: this season's, all before quiet */
  readonly draw: (
    brush: Brush,
    plan: Plan,
    book: CropBook,
    items: SheetItems,
    year: number | null,
  ) => void;
  readonly sectorOf: typeof sectorOf;
}

export const groundPainter: GroundPainter = {
  draw: (brush, plan, book, items, year) => {
    if (year === null) drawEarlierCrops(brush, plan, book, items);
    else drawGroundOfYear(brush, plan, book, year);
    drawGroundMarks(brush, plan);
  },
  sectorOf,
};
