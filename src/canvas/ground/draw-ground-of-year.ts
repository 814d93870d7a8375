/** The ground as it was in an earlier year: its crops in outline, with code, variety and kind. */
import type { CropBook } from "../../core/kinds/crop-book.ts";
import { hatchByGroup } from "../../core/page/hatch.ts";
import { outlineOf } from "../../core/geometry/outline.ts";
import type { EarlierCrop, Plan } from "../../core/model/plan.ts";
import { visibleBounds } from "../scene/viewport.ts";
import { type Brush, faded, fill, stroke, traceOutline } from "../draw/brush.ts";
import { drawWords, wordsWidth } from "../draw/draw-text.ts";
import { hatchPattern } from "../draw/hatch-pattern.ts";
import { labelPlace } from "../draw/label-place.ts";

/** The past is drawn with less ink than what is planned. */
const PAST_ALPHA = 0.35;
const WORDS_PX = 14;

export function drawGroundOfYear(brush: Brush, plan: Plan, book: CropBook, year: number): void {
  const seen = visibleBounds(brush.view, brush, 0);
  const hatches = hatchByGroup(plan, (kind) => book.kind(kind)?.group);
  const { inkSoft } = brush.colours;
  for (const crop of plan.earlierCrops) {
    if (crop.year !== year) continue;
    const outline = outlineOf(crop.outline);
    const { minX, minY, maxX, maxY } = outline.bounds;
    if (minX > seen.maxX || maxX < seen.minX || minY > seen.maxY || maxY < seen.minY) continue;
    const hatch = hatches.get(book.kind(crop.kind)?.group ?? "");
    traceOutline(brush, outline);
    if (hatch) {
      const { context, colours, view, ratio } = brush;
      const pattern = hatchPattern(context, hatch, colours, view, ratio);
      faded(brush, PAST_ALPHA, () => fill(brush, pattern));
    }
    stroke(brush, { colour: inkSoft, widthPx: 1.25 });
    drawCropWords(brush, crop, book);
  }
}

/** The longest words that fit: code, variety and kind; else the variety or kind; else the code. */
function drawCropWords(brush: Brush, crop: EarlierCrop, book: CropBook): void {
  const { code = "", varietyName = "", outline } = crop;
  const kind = book.kind(crop.kind)?.name ?? crop.kind;
  const seed = crop.wentToSeed === "yes" ? ", seed" : "";
  const tried = [
    [code, varietyName, kind].filter((each) => each !== "").join(" ") + seed,
    `${varietyName === "" ? kind : varietyName}${seed}`,
    varietyName === "" ? kind : varietyName,
    code,
  ];
  for (const text of tried) {
    if (text === "") continue;
    const size = { widthPx: wordsWidth(brush, "note", text) + 8, heightPx: WORDS_PX };
    const place = labelPlace(outline, outlineOf(outline), brush.view, size);
    if (!place) continue;
    const words = { text, face: "note", colour: brush.colours.inkSoft, hasHalo: true } as const;
    drawWords(brush, place.at, words, place.angle);
    return;
  }
}
