/** What grew here in earlier years: a dotted line on the ground, with year and kind where it is free. */
import type { CropBook } from "../../core/kinds/crop-book.ts";
import { outlineOf } from "../../core/geometry/outline.ts";
import type { EarlierCrop, Plan } from "../../core/model/plan.ts";
import { type Brush, stroke, traceOutline } from "../draw/brush.ts";
import type { GroundNamed } from "./ground-labels.ts";
import { isInView } from "./in-view.ts";

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

/** Draws the lines; answers with what is to be named, half a year being worse than none. */
export function drawEarlierCrops(
  brush: Brush,
  { earlierCrops }: Plan,
  book: CropBook,
): readonly GroundNamed[] {
  const named: GroundNamed[] = [];
  for (const crops of byGround(earlierCrops)) {
    const [latest] = crops;
    if (!latest) continue;
    const outline = outlineOf(latest.outline);
    if (!isInView(brush, outline)) continue;
    traceOutline(brush, outline);
    stroke(brush, { colour: brush.colours.inkSoft, widthPx: 1.5, dash: [1.5, 4] });
    const years = crops
      .slice(0, YEARS_MOST)
      .map(({ year, kind }) => `${year} ${book.kind(kind)?.name ?? kind}`);
    const texts = years.length === 1 ? years : [years.join(", "), years[0] ?? ""];
    named.push({ shape: latest.outline, outline, texts, stands: "on its ground" });
  }
  return named;
}
