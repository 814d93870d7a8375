/** What grew here in earlier years: a dotted line on the ground, with year and kind where it is free. */
import type { CropBook } from "../core/crops/crop-book.ts";
import type { EarlierCrop, Plan } from "../core/model/plan.ts";
import { type Brush, stroke, traceOutline } from "./brush.ts";
import { drawWords, wordsWidth } from "./draw-words.ts";
import { labelPlace } from "./label-place.ts";
import { outlineFor } from "./sheet-items.ts";
import { visibleBounds } from "./viewport.ts";

const WORDS_PX = 14;
/** Years named on one piece of ground; the dialog lists the rest. */
const YEARS_MOST = 2;

type Crops = readonly EarlierCrop[];

const grounds = new WeakMap<Crops, readonly Crops[]>();

/** Crops on the very same ground together, the latest first. */
function byGround(crops: Crops): readonly Crops[] {
  const known = grounds.get(crops);
  if (known) return known;
  const groups = new Map<string, EarlierCrop[]>();
  for (const crop of crops) {
    const { minX, minY, maxX, maxY } = outlineFor(crop.outline).bounds;
    const key = [minX, minY, maxX, maxY].map((metres) => metres.toFixed(2)).join(" ");
    groups.set(key, [...(groups.get(key) ?? []), crop]);
  }
  const made = [...groups.values()].map((group) => group.sort((a, b) => b.year - a.year));
  grounds.set(crops, made);
  return made;
}

/** Under the plantings: their codes and hatches matter more. */
export function drawEarlierCrops(brush: Brush, { earlierCrops }: Plan, book: CropBook): void {
  if (earlierCrops.length === 0) return;
  const seen = visibleBounds(brush.view, brush, 0);
  const { inkSoft } = brush.colours;
  for (const crops of byGround(earlierCrops)) {
    const [latest] = crops;
    if (!latest) continue;
    const outline = outlineFor(latest.outline);
    const { minX, minY, maxX, maxY } = outline.bounds;
    if (minX > seen.maxX || maxX < seen.minX || minY > seen.maxY || maxY < seen.minY) continue;
    traceOutline(brush, outline);
    stroke(brush, { colour: inkSoft, widthPx: 1.5, dash: [1.5, 4] });
    const named = crops
      .slice(0, YEARS_MOST)
      .map(({ year, kind }) => `${year} ${book.kind(kind)?.name ?? kind}`);
    const [short = ""] = named;
    for (const text of [named.join(", "), short]) {
      const size = { widthPx: wordsWidth(brush, "note", text) + 8, heightPx: WORDS_PX };
      const place = labelPlace(latest.outline, outline, brush.view, size);
      if (!place) continue;
      drawWords(brush, place.at, { text, face: "note", colour: inkSoft }, place.angle);
      break;
    }
  }
}
