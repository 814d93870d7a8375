/** What grew here in earlier years: a dotted line on the ground, with year and kind where it is free. */
import type { CropBook } from "../../core/kinds/crop-book.ts";
import { outlineContains, outlineOf } from "../../core/geometry/outline.ts";
import type { EarlierCrop, Plan } from "../../core/model/plan.ts";
import { type Brush, stroke, traceOutline } from "../draw/brush.ts";
import { drawWords, wordsWidth } from "../draw/draw-text.ts";
import { type LabelPlace, labelPlace } from "../draw/label-place.ts";
import type { SheetItems } from "../scene/sheet-items.ts";
import { toSheet, visibleBounds } from "../scene/viewport.ts";

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
    const { minX, minY, maxX, maxY } = outlineOf(crop.outline).bounds;
    const key = [minX, minY, maxX, maxY].map((metres) => metres.toFixed(2)).join(" ");
    groups.set(key, [...(groups.get(key) ?? []), crop]);
  }
  const made = [...groups.values()].map((group) => group.sort((a, b) => b.year - a.year));
  grounds.set(crops, made);
  return made;
}

/** Whether a planting lies over words: half a year is worse than none. */
function isCovered(
  { view }: Brush,
  items: SheetItems,
  { at, angle }: LabelPlace,
  widthPx: number,
): boolean {
  const half = widthPx / 2;
  return [-1, -0.5, 0, 0.5, 1].some((share) => {
    const x = at.x + Math.cos(angle) * half * share;
    const y = at.y + Math.sin(angle) * half * share;
    const place = toSheet(view, { x, y });
    const box = { minX: place.x, minY: place.y, maxX: place.x, maxY: place.y };
    return items
      .within(box)
      .some(
        ({ what, outline }) => what === "planting" && outlineContains(outline, place.x, place.y),
      );
  });
}

/** Under the plantings: their codes and hatches matter more. */
export function drawEarlierCrops(
  brush: Brush,
  { earlierCrops }: Plan,
  book: CropBook,
  items: SheetItems,
): void {
  if (earlierCrops.length === 0) return;
  const seen = visibleBounds(brush.view, brush, 0);
  const { inkSoft } = brush.colours;
  for (const crops of byGround(earlierCrops)) {
    const [latest] = crops;
    if (!latest) continue;
    const outline = outlineOf(latest.outline);
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
      if (!place || isCovered(brush, items, place, size.widthPx)) continue;
      drawWords(brush, place.at, { text, face: "note", colour: inkSoft }, place.angle);
      break;
    }
  }
}
