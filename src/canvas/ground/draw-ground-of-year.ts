/** The ground as it was in an earlier year: its crops in outline, with code, variety and kind. */
import type { CropBook } from "../../core/kinds/crop-book.ts";
import { hatchByGroup } from "../../core/page/hatch.ts";
import { outlineOf } from "../../core/geometry/outline.ts";
import type { EarlierCrop, Plan } from "../../core/model/plan.ts";
import { type Brush, faded, fill, stroke, traceOutline } from "../draw/brush.ts";
import { hatchPattern } from "../draw/hatch-pattern.ts";
import type { GroundNamed } from "./ground-labels.ts";
import { isInView } from "./in-view.ts";

/** The past is drawn with less ink than what is planned. */
const PAST_ALPHA = 0.35;

/** Draws the ground; answers with what is to be named. */
export function drawGroundOfYear(
  brush: Brush,
  plan: Plan,
  book: CropBook,
  year: number,
): readonly GroundNamed[] {
  const hatches = hatchByGroup(plan, (kind) => book.kind(kind)?.group);
  const { inkSoft } = brush.colours;
  const named: GroundNamed[] = [];
  for (const crop of plan.earlierCrops) {
    if (crop.year !== year) continue;
    const outline = outlineOf(crop.outline);
    if (!isInView(brush, outline)) continue;
    const hatch = hatches.get(book.kind(crop.kind)?.group ?? "");
    traceOutline(brush, outline);
    if (hatch) {
      const { context, colours, view, ratio } = brush;
      const pattern = hatchPattern(context, hatch, colours, view, ratio);
      faded(brush, PAST_ALPHA, () => fill(brush, pattern));
    }
    stroke(brush, { colour: inkSoft, widthPx: 1.25 });
    const texts = cropTexts(crop, book);
    named.push({ shape: crop.outline, outline, texts, stands: "on its ground" });
  }
  return named;
}

/** The longest first: code, variety and kind; then the variety or kind; then the code. */
function cropTexts(crop: EarlierCrop, book: CropBook): readonly string[] {
  const { code = "", varietyName = "" } = crop;
  const kind = book.kind(crop.kind)?.name ?? crop.kind;
  const seed = crop.wentToSeed === "yes" ? ", seed" : "";
  return [
    [code, varietyName, kind].filter((each) => each !== "").join(" ") + seed,
    `${varietyName === "" ? kind : varietyName}${seed}`,
    varietyName === "" ? kind : varietyName,
    code,
  ].filter((text) => text !== "");
}
