/** Words put on a map sheet, in the sizes and places given, with leader lines where they stand apart. */
import type { Ground } from "../page/label-places.ts";
import type { LabelPlacer, Placed } from "../page/label-placer.ts";
import { directions } from "../page/label-box.ts";
import type { MapItem } from "./map-items.ts";
import { type Mark, type TextRuler, area, capHeight, line, text } from "../page/scene.ts";

/** One place to try, with its type sizes, the best first. */
export interface LabelTry {
  readonly place: "inside" | "turned" | "over" | "beside" | "apart";
  readonly sizesPt: readonly number[];
}

export interface LabelRule {
  /** Every label goes through one try before any goes to the next. */
  readonly tries: readonly LabelTry[];
  /** Bold in a ruled white box, as on a stake; else plain words on white. */
  readonly isBoxed: boolean;
}

export interface PlacedLabels {
  readonly marks: readonly Mark[];
  readonly placed: readonly MapItem[];
}

export function placeLabels(
  subjects: readonly { readonly item: MapItem; readonly ground: Ground }[],
  placer: LabelPlacer,
  ruler: TextRuler,
  rule: LabelRule,
): PlacedLabels {
  const leaders: Mark[] = [];
  const labels: Mark[] = [];
  const placed: MapItem[] = [];
  // Everything that fits where it belongs goes first, so that leaders find what is left.
  let waiting = subjects;
  for (const attempt of rule.tries) {
    const left: (typeof waiting)[number][] = [];
    for (const subject of waiting) {
      const found = placeOne(subject, attempt, placer, ruler, rule.isBoxed);
      if (found === null) {
        left.push(subject);
        continue;
      }
      placed.push(subject.item);
      labels.push(...labelMarks(subject.item.label, found.placed, found.sizePt, rule.isBoxed));
      leaders.push(...leaderMarks(found.placed));
    }
    waiting = left;
  }
  return { marks: [...leaders, ...labels], placed };
}

function placeOne(
  { item, ground }: { readonly item: MapItem; readonly ground: Ground },
  { place, sizesPt }: LabelTry,
  placer: LabelPlacer,
  ruler: TextRuler,
  isBoxed: boolean,
): { readonly placed: Placed; readonly sizePt: number } | null {
  const padMm = isBoxed ? 1 : 0.5;
  for (const sizePt of sizesPt) {
    const size = {
      width: ruler.width(item.label, sizePt, isBoxed) + 2 * padMm,
      height: capHeight(sizePt) + 2 * padMm,
    };
    const placed = placer[place](ground, size);
    if (placed) return { placed, sizePt };
  }
  return null;
}

function labelMarks(
  words: string,
  { label }: Placed,
  sizePt: number,
  isBoxed: boolean,
): readonly Mark[] {
  const { down } = directions(label.turnDeg);
  const drop = capHeight(sizePt) / 2;
  const at = { x: label.centre.x + down.x * drop, y: label.centre.y + down.y * drop };
  return [
    area(label.corners, 1, isBoxed ? { widthMm: 0.2 } : null),
    text(at, words, sizePt, { isBold: isBoxed, align: "middle", turnDeg: label.turnDeg }),
  ];
}

function leaderMarks({ leader }: Placed): readonly Mark[] {
  if (leader === null) return [];
  const [from] = leader;
  return [
    line(leader, { widthMm: 0.2 }),
    { kind: "circle", centre: from, radiusMm: 0.5, fill: 0, pen: null },
  ];
}
