/** Labels laid on their sheets: one size of type on all, both sides of those that are folded. */
import { qrMarks } from "../page/qr-marks.ts";
import {
  type Box,
  DECORATION,
  type Mark,
  type Page,
  type Pen,
  type TextRuler,
  area,
  boxRing,
  figure,
  inPart,
  line,
} from "../page/scene.ts";
import type { LabelFacts } from "./label-facts.ts";
import {
  LEAST_SIZES,
  type RoomedLabel,
  type TypeSizes,
  setCut,
  setWords,
  sharedSizes,
} from "./label-setting.ts";
import {
  type LabelFold,
  type LabelSize,
  labelBoxOf,
  labelFaces,
  labelsOnSheet,
} from "./label-sizes.ts";
import { turnedMarks } from "./turned-marks.ts";
import { sheetWords } from "./packet-words.ts";

/** How far a printer prints beside where it should, mm: to the right, and down the page. */
export interface PrinterOffset {
  readonly right: number;
  readonly down: number;
}

export interface LabelChoice {
  readonly size: LabelSize;
  /** First label used, from 1: sheets begun before. */
  readonly startAt: number;
  readonly hasQr: boolean;
  /** What the seed was treated with; empty: nothing. */
  readonly treatment: string;
  /** Everything is printed so far the other way; absent: the printer prints where it should. */
  readonly offset?: PrinterOffset;
}

const PAD_MM = 2.5;
const MOST_CODE_MM = 22;
/** Of a side's width. */
const CODE_SHARE = 0.3;
const CUT_LINE: Pen = { widthMm: 0.1, dashMm: [1, 2] };
const FOLD_LINE: Pen = { widthMm: 0.1, dashMm: [0.4, 1.2] };

export interface LabelSheets {
  readonly pages: readonly Page[];
  /** The type all labels share, points. */
  readonly sizes: TypeSizes;
  /** For each label with words that found no room: its head and those words. */
  readonly lost: readonly string[];
  /** Heads of labels on which the code for a machine found no room. */
  readonly withoutCode: readonly string[];
}

/** A label with the room for its words, and beside them for its code. */
interface Prepared extends RoomedLabel {
  readonly code: Box | null;
}

export function labelPages(
  labels: readonly LabelFacts[],
  choice: LabelChoice,
  ruler: TextRuler,
): LabelSheets {
  const { size, startAt, offset = { right: 0, down: 0 } } = choice;
  const [face] = labelFaces(labelBoxOf(size, 0), size.fold);
  const side = face ? { ...face.box, left: 0, top: 0 } : labelBoxOf(size, 0);
  const prepared = labels.map((facts) => prepare(facts, side, choice.hasQr, ruler));
  const isWhole = (label: RoomedLabel) => setWords(label, LEAST_SIZES, ruler) !== null;
  const sizes = sharedSizes(prepared.filter(isWhole), ruler);
  const lost: string[] = [];
  const sheets: Mark[][] = [];
  prepared.forEach((label, index) => {
    const place = index + startAt - 1;
    const each = labelsOnSheet(size);
    const box = shifted(labelBoxOf(size, place % each), -offset.right, -offset.down);
    const marks = (sheets[Math.floor(place / each)] ??= []);
    if (size.isCut) marks.push(area(boxRing(box), null, CUT_LINE));
    marks.push(...foldMarks(box, size.fold));
    const set = setWords(label, sizes, ruler);
    const cut = set ? null : setCut(label, ruler);
    if (cut) lost.push(`${label.facts.head}: ${cut.lost.join("; ")}`);
    const words = [...(set ?? cut?.marks ?? []), ...codeMarks(label)];
    labelFaces(box, size.fold).forEach(({ box: clip, isTurned }, at) => {
      const here = turnedMarks(words, clip, isTurned);
      // The other side says the same: it is read out once.
      marks.push({ kind: "group", clip, marks: at === 0 ? here : inPart(DECORATION, here) });
    });
  });
  // Sheets before the first label would be empty.
  const pages = sheets
    .filter((marks) => marks.length > 0)
    .map((marks, index) => ({ ...size.page, name: sheetWords.page(index + 1), marks }));
  const withoutCode = choice.hasQr
    ? prepared.filter(({ code }) => code === null).map(({ facts }) => facts.head)
    : [];
  return { pages, sizes, lost, withoutCode };
}

/** Room on a side whose corner is at 0, 0; the code is left out where words would be lost for it. */
function prepare(facts: LabelFacts, side: Box, hasQr: boolean, ruler: TextRuler): Prepared {
  const room: Box = {
    left: PAD_MM,
    top: PAD_MM,
    width: side.width - 2 * PAD_MM,
    height: side.height - 2 * PAD_MM,
  };
  if (!hasQr) return { facts, room, code: null };
  const width = Math.min(room.height, room.width * CODE_SHARE, MOST_CODE_MM);
  const code: Box = {
    left: room.left + room.width - width,
    top: room.top + (room.height - width) / 2,
    width,
    height: width,
  };
  const beside = { ...room, width: room.width - width };
  const isRead = qrMarks(facts.machine, code) !== null;
  const fits = isRead && setWords({ facts, room: beside }, LEAST_SIZES, ruler) !== null;
  return fits ? { facts, room: beside, code } : { facts, room, code: null };
}

function codeMarks({ facts, code }: Prepared): readonly Mark[] {
  const marks = code && qrMarks(facts.machine, code);
  return marks ? figure(sheetWords.machineCode(facts.machine), code, marks) : [];
}

function shifted(box: Box, right: number, down: number): Box {
  return { ...box, left: box.left + right, top: box.top + down };
}

/** Where to fold: across the middle, or on both sides of the stake. */
function foldMarks(box: Box, fold: LabelFold): readonly Mark[] {
  const [first, second] = labelFaces(box, fold);
  if (!first || !second) return [];
  if (fold === "over") {
    const y = second.box.top;
    const right = box.left + box.width;
    return [
      line(
        [
          { x: box.left, y },
          { x: right, y },
        ],
        FOLD_LINE,
      ),
    ];
  }
  return [first.box.left + first.box.width, second.box.left].map((x) =>
    line(
      [
        { x, y: box.top },
        { x, y: box.top + box.height },
      ],
      FOLD_LINE,
    ),
  );
}
