/** Words put on a map sheet, in the sizes and places given, with leader lines where they stand apart. */
import { type Ground, longestEdge } from "../page/label-places.ts";
import type { LabelPlacer, Placed } from "../page/label-placer.ts";
import { directions } from "../page/label-box.ts";
import type { MapItem } from "./map-items.ts";
import { ROW_BAND_MM } from "./row-marks.ts";
import { type Mark, type TextRuler, area, capHeight, line, text } from "../page/scene.ts";

/** Which words a try puts: the label alone, or with the names below it or behind it. */
export type LabelWords = "label" | "stacked" | "in line";

/** One place to try, with its type sizes, the best first. */
export interface LabelTry {
  readonly place: "inside" | "turned" | "over" | "beside" | "apart";
  readonly sizesPt: readonly number[];
  /** Absent: the label alone. */
  readonly words?: readonly LabelWords[];
  /** Least clear ground left past the words at both ends, or at both sides; absent: none. */
  readonly leastClear?: ClearGround;
  /** Tried only for what would not be told apart without its names. */
  readonly isForNeeded?: boolean;
}

/** Millimetres along and across the ground; one of the two is enough. */
export interface ClearGround {
  readonly alongMm: number;
  readonly acrossMm: number;
}

export interface LabelRule {
  /** Every label goes through one try before any goes to the next. */
  readonly tries: readonly LabelTry[];
  /** Bold in a ruled white box, as on a stake; else plain words on white. */
  readonly isBoxed: boolean;
}

export interface LabelSubject {
  readonly item: MapItem;
  readonly ground: Ground;
  /** Names that stand with the label where there is room; empty for none. */
  readonly names?: string;
  /** No hatch tells what it crosses with: the names must. */
  readonly isNameNeeded?: boolean;
}

export interface PlacedLabels {
  readonly marks: readonly Mark[];
  readonly placed: readonly MapItem[];
  /** Of those placed, the ones whose names are there as well. */
  readonly named: readonly MapItem[];
}

export function placeLabels(
  subjects: readonly LabelSubject[],
  placer: LabelPlacer,
  ruler: TextRuler,
  rule: LabelRule,
): PlacedLabels {
  const leaders: Mark[] = [];
  const labels: Mark[] = [];
  const placed: MapItem[] = [];
  const named: MapItem[] = [];
  // Everything that fits where it belongs goes first, so that leaders find what is left.
  let waiting = subjects;
  for (const attempt of rule.tries) {
    const left: LabelSubject[] = [];
    for (const subject of waiting) {
      const isTried = attempt.isForNeeded !== true || subject.isNameNeeded === true;
      const found = isTried ? placeOne(subject, attempt, placer, ruler, rule) : null;
      if (found === null) {
        left.push(subject);
        continue;
      }
      placed.push(subject.item);
      if (found.set.hasNames) named.push(subject.item);
      labels.push(...labelMarks(found.set, found.placed, rule));
      leaders.push(...leaderMarks(found.placed));
    }
    waiting = left;
  }
  return { marks: [...leaders, ...labels], placed, named };
}

/** One line of a label, and where its middle lies from the middle of the box; mm. */
interface SetLine {
  readonly words: string;
  readonly sizePt: number;
  readonly isBold: boolean;
  readonly rightMm: number;
  readonly downMm: number;
}

interface SetLabel {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly SetLine[];
  readonly hasNames: boolean;
}

/** Names are set so much smaller than the code, but not under the least. */
const NAME_SMALLER_PT = 1.5;
const LEAST_PT = 7;
/** Between code and names, below and behind it; mm. */
const NAME_GAP = { below: 1, behind: 1.6 } as const;

function placeOne(
  subject: LabelSubject,
  { place, sizesPt, words = ["label"], leastClear }: LabelTry,
  placer: LabelPlacer,
  ruler: TextRuler,
  { isBoxed }: LabelRule,
): { readonly placed: Placed; readonly set: SetLabel } | null {
  const isClear = (set: SetLabel) =>
    leastClear === undefined || leavesClear(subject, set, place === "turned", leastClear);
  for (const sizePt of sizesPt) {
    for (const which of words) {
      const set = setLabel(subject, which, sizePt, isBoxed, ruler);
      if (set === null || !isClear(set)) continue;
      const placed = placer[place](subject.ground, set);
      if (placed) return { placed, set };
    }
  }
  return null;
}

/** As though the words lay in the middle: along the ground's longest edge, or across it. */
function leavesClear(
  { item, ground }: LabelSubject,
  { width, height }: SetLabel,
  isTurned: boolean,
  { alongMm, acrossMm }: ClearGround,
): boolean {
  const { length, turnDeg } = longestEdge(ground);
  if (length === 0) return false;
  const steep = Math.abs((((turnDeg % 180) + 180) % 180) - 90) < 45;
  const isAlong = steep === isTurned;
  const [along, across] = isAlong ? [width, height] : [height, width];
  const wide = ringArea(ground) / length;
  const band = item.rows?.count === undefined ? 0 : 2 * ROW_BAND_MM;
  return length - along - band >= 2 * alongMm || wide - across >= 2 * acrossMm;
}

function setLabel(
  { item: { label }, names = "" }: LabelSubject,
  which: LabelWords,
  sizePt: number,
  isBoxed: boolean,
  ruler: TextRuler,
): SetLabel | null {
  const padMm = isBoxed ? 1 : 0.5;
  const width = ruler.width(label, sizePt, isBoxed);
  const high = capHeight(sizePt);
  const first = { words: label, sizePt, isBold: isBoxed };
  if (which === "label") {
    const lines = [{ ...first, rightMm: 0, downMm: 0 }];
    return { width: width + 2 * padMm, height: high + 2 * padMm, lines, hasNames: false };
  }
  if (names === "") return null;
  const namePt = Math.max(sizePt - NAME_SMALLER_PT, LEAST_PT);
  const nameWidth = ruler.width(names, namePt);
  const second = { words: names, sizePt: namePt, isBold: false };
  if (which === "in line") {
    const whole = width + NAME_GAP.behind + nameWidth;
    return {
      width: whole + 2 * padMm,
      // Room below for letters that hang, which codes have none of.
      height: high + 2 * padMm + 0.4,
      lines: [
        { ...first, rightMm: (width - whole) / 2, downMm: 0 },
        { ...second, rightMm: (whole - nameWidth) / 2, downMm: (high - capHeight(namePt)) / 2 },
      ],
      hasNames: true,
    };
  }
  const nameHigh = capHeight(namePt);
  const whole = high + NAME_GAP.below + nameHigh;
  return {
    width: Math.max(width, nameWidth) + 2 * padMm,
    height: whole + 2 * padMm + 0.4,
    lines: [
      { ...first, rightMm: 0, downMm: (high - whole) / 2 - 0.2 },
      { ...second, rightMm: 0, downMm: (whole - nameHigh) / 2 - 0.2 },
    ],
    hasNames: true,
  };
}

/** Ground inside the outer ring, square millimetres. */
export function ringArea({ rings: [ring = []] }: Pick<Ground, "rings">): number {
  const twice = ring.reduce((sum, { x, y }, index) => {
    const next = ring[(index + 1) % ring.length] ?? { x, y };
    return sum + x * next.y - next.x * y;
  }, 0);
  return Math.abs(twice) / 2;
}

function labelMarks(
  { lines }: SetLabel,
  { label }: Placed,
  { isBoxed }: LabelRule,
): readonly Mark[] {
  const { right, down } = directions(label.turnDeg);
  return [
    area(label.corners, 1, isBoxed ? { widthMm: 0.2 } : null),
    ...lines.map(({ words, sizePt, isBold, rightMm, downMm }) => {
      const drop = downMm + capHeight(sizePt) / 2;
      const at = {
        x: label.centre.x + right.x * rightMm + down.x * drop,
        y: label.centre.y + right.y * rightMm + down.y * drop,
      };
      return text(at, words, sizePt, { isBold, align: "middle", turnDeg: label.turnDeg });
    }),
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
