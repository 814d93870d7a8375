/** Labels laid on their sheets, and a last page that says what to look at before they are used. */
import { cutToWidth, flowInto, paragraph } from "../page/flow.ts";
import type { LabelFacts } from "./label-facts.ts";
import type { LabelSize } from "./label-sizes.ts";
import { qrMarks } from "../page/qr-marks.ts";
import {
  type Box,
  type Mark,
  type Page,
  type TextRuler,
  area,
  boxRing,
  capHeight,
  text,
} from "../page/scene.ts";

export interface LabelChoice {
  readonly size: LabelSize;
  /** First label used, from 1: sheets begun before. */
  readonly startAt: number;
  readonly hasQr: boolean;
  /** What the seed was treated with; empty: nothing. */
  readonly treatment: string;
}

const PAD_MM = 2.5;
/** Codes are read while standing, names while stooping; the largest that fits is taken. Points. */
const HEAD_PT = [60, 46, 36, 30, 24, 20, 16, 14, 12, 10, 8];
const BODY_PT = [14, 12, 11, 10, 9, 8, 7];
/** First tried with words of at least so many points. */
const LEAST_BODY_PT = [9, 8, 7];
/** Labels this much wider than high have the head beside the words. */
const WIDE = 3;

interface SetWords {
  readonly marks: readonly Mark[];
  /** Words that found no room. */
  readonly lost: readonly string[];
}

export interface LabelSheets {
  readonly pages: readonly Page[];
  /** For each label with words that found no room: its head and those words. */
  readonly lost: readonly string[];
}

export function labelPages(
  labels: readonly LabelFacts[],
  { size, startAt, hasQr }: LabelChoice,
  ruler: TextRuler,
): LabelSheets {
  const lost: string[] = [];
  const each = size.columns * size.rows;
  const sheets: Mark[][] = [];
  labels.forEach((facts, index) => {
    const place = index + startAt - 1;
    const sheet = Math.floor(place / each);
    const box = labelBoxOf(size, place % each);
    const marks = (sheets[sheet] ??= []);
    if (size.isCut) marks.push(area(boxRing(box), null, { widthMm: 0.1, dashMm: [1, 2] }));
    const set = labelMarks(facts, box, hasQr, ruler);
    if (set.lost.length > 0) lost.push(`${facts.head}: ${set.lost.join("; ")}`);
    marks.push({ kind: "group", clip: box, marks: set.marks });
  });
  // Sheets before the first label would be empty.
  const pages = sheets
    .filter((marks) => marks.length > 0)
    .map((marks, index) => ({ ...size.page, name: `Labels ${index + 1}`, marks }));
  return { pages, lost };
}

function labelBoxOf({ left, top, pitchX, pitchY, columns, label }: LabelSize, place: number): Box {
  return {
    left: left + (place % columns) * pitchX,
    top: top + Math.floor(place / columns) * pitchY,
    width: label.widthMm,
    height: label.heightMm,
  };
}

/** The code is left out where words would be lost for it. */
function labelMarks(facts: LabelFacts, box: Box, hasQr: boolean, ruler: TextRuler): SetWords {
  const room: Box = {
    left: box.left + PAD_MM,
    top: box.top + PAD_MM,
    width: box.width - 2 * PAD_MM,
    height: box.height - 2 * PAD_MM,
  };
  const side = Math.min(box.height - 1, box.width * 0.38, 26);
  const square: Box = {
    left: box.left + box.width - side - 0.5,
    top: box.top + (box.height - side) / 2,
    width: side,
    height: side,
  };
  const code = hasQr ? qrMarks(facts.machine, square) : null;
  if (code) {
    const words = setWords(facts, { ...room, width: room.width - side + 1 }, ruler);
    if (words.lost.length === 0) return { ...words, marks: [...words.marks, ...code] };
  }
  return setWords(facts, room, ruler);
}

/** The largest type with which nothing is lost; the head gives way before the words get small. */
function setWords(facts: LabelFacts, room: Box, ruler: TextRuler): SetWords {
  const isBeside = room.width > WIDE * room.height;
  const tries = LEAST_BODY_PT.flatMap((least) =>
    HEAD_PT.flatMap((headPt) =>
      BODY_PT.filter((bodyPt) => bodyPt >= least).map((bodyPt) => ({ headPt, bodyPt })),
    ),
  );
  for (const { headPt, bodyPt } of tries) {
    const made = setAt(facts, room, ruler, { headPt, bodyPt, isBeside });
    if (made && made.lost.length === 0) return made;
  }
  const headPt = HEAD_PT.at(-1) as number;
  const bodyPt = BODY_PT.at(-1) as number;
  const cut = setAt(facts, room, ruler, { headPt, bodyPt, isBeside: false, isCut: true });
  return cut ?? { marks: [], lost: facts.lines };
}

interface Setting {
  readonly headPt: number;
  readonly bodyPt: number;
  readonly isBeside: boolean;
  /** The head is cut to the room rather than refused. */
  readonly isCut?: boolean;
}

/** Head over or, on a long strip, beside the words; null where the head is too large. */
function setAt(
  facts: LabelFacts,
  room: Box,
  ruler: TextRuler,
  { headPt, bodyPt, isBeside, isCut = false }: Setting,
): SetWords | null {
  const headWidth = ruler.width(facts.head, headPt, true);
  const capMm = capHeight(headPt);
  const mostWide = isBeside ? room.width * 0.5 : room.width;
  const mostHigh = room.height * (isBeside ? 1 : 0.45);
  if (!isCut && (headWidth > mostWide || capMm > mostHigh)) return null;
  const beside = isBeside ? headWidth + 3 : 0;
  const above = isBeside ? 0 : capMm + 1.5;
  const body: Box = {
    left: room.left + beside,
    top: room.top + above,
    width: room.width - beside,
    height: room.height - above,
  };
  const words = [facts.second, ...facts.lines];
  const items = words.map((each, index) =>
    paragraph(each, body.width, bodyPt, ruler, { after: 0, isBold: index === 0 }),
  );
  const headTop = isBeside ? (room.height - capMm) / 2 : 0;
  const head = text(
    { x: room.left, y: room.top + headTop + capMm },
    cutToWidth(facts.head, room.width, headPt, ruler, true),
    headPt,
    { isBold: true },
  );
  const { marks, rest } = flowInto(items, [body]);
  return { marks: [head, ...marks], lost: words.slice(words.length - rest.length) };
}
