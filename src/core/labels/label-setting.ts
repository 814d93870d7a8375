/** The words of one label set in its room, and the sizes of type that all labels of a sheet share. */
import { cutToWidth, lineHeight, textLines, wrapText } from "../page/flow.ts";
import {
  type Box,
  MM_PER_POINT,
  type Mark,
  type Part,
  type TextRuler,
  inPart,
  text,
} from "../page/scene.ts";
import type { LabelFacts } from "./label-facts.ts";

/** Sizes of type, points. */
export interface TypeSizes {
  readonly head: number;
  readonly body: number;
}

/** Words with the room they have: a code read by machine takes some of it. */
export interface RoomedLabel {
  readonly facts: LabelFacts;
  readonly room: Box;
}

export interface SetWords {
  readonly marks: readonly Mark[];
  /** Words that found no room. */
  readonly lost: readonly string[];
}

/** Codes are read while standing, names while stooping. */
const HEAD_PT = [60, 46, 36, 30, 24, 20, 18, 16, 14, 12, 10];
const BODY_PT = [16, 14, 12, 11, 10, 9, 8];
/** Nothing on a label is smaller: US seed law asks 8 points for some words (7 CFR 201.31a). */
export const LEAST_SIZES: TypeSizes = { head: 10, body: 8 };
/** A name this many times the words beneath it is found at once; more is wasted. */
const MOST_NAME = 2.2;
/** Rooms this much wider than high have the head beside the words. */
const WIDE = 3;
/** Of the type size: above the baseline of capitals, of capitals with an accent, and below. */
const ABOVE = 0.74;
const ABOVE_ACCENT = 0.97;
const BELOW = 0.26;
const NAME_LINE = 1.22;
const MOST_NAME_LINES = 2;

/** The largest sizes at which every label keeps all its words; the least where there are none. */
export function sharedSizes(labels: readonly RoomedLabel[], ruler: TextRuler): TypeSizes {
  const [first] = labels;
  if (!first) return LEAST_SIZES;
  const waiting = [...labels];
  const fits = (sizes: TypeSizes) => {
    const at = waiting.findIndex((label) => setWords(label, sizes, ruler) === null);
    if (at < 0) return true;
    // The label that did not fit is asked first about the next sizes.
    waiting.unshift(...waiting.splice(at, 1));
    return false;
  };
  return triesFor(first).find(fits) ?? LEAST_SIZES;
}

/** Sizes in the order they are wanted. */
function triesFor({ facts, room }: RoomedLabel): readonly TypeSizes[] {
  const all = BODY_PT.flatMap((body) =>
    HEAD_PT.filter((head) => head >= body + 2).map((head) => ({ head, body })),
  );
  if (facts.headIs === "name" && !isBeside(room))
    return all.filter(({ head, body }) => head <= MOST_NAME * body);
  // The code as large as it goes while the words keep 10 points; else 9; else 8.
  const byHead = all.toSorted((a, b) => b.head - a.head || b.body - a.body);
  return [10, 9, 8].flatMap((least) => byHead.filter(({ body }) => body >= least));
}

function isBeside(room: Box): boolean {
  return room.width > WIDE * room.height;
}

/** Null where something finds no room at these sizes. */
export function setWords(
  { facts, room }: RoomedLabel,
  sizes: TypeSizes,
  ruler: TextRuler,
): readonly Mark[] | null {
  const section: Part = { role: "section" };
  const head = headOf(facts, room, sizes.head, ruler);
  if (!head) return null;
  const body = bodyBoxes(room, head);
  const { marks, lost } = fillBoxes(bodyWords(facts), body, sizes.body, ruler, section);
  if (lost.length > 0) return null;
  return [...head.marks(section), ...marks];
}

/** As much as goes at the least sizes, and what does not. */
export function setCut({ facts, room }: RoomedLabel, ruler: TextRuler): SetWords {
  const section: Part = { role: "section" };
  const words = cutToWidth(facts.head, room.width, LEAST_SIZES.head, ruler, true);
  const head = headLines([words], room, LEAST_SIZES.head, facts);
  const below = { ...room, top: room.top + head.height, height: room.height - head.height };
  const { marks, lost } = fillBoxes(bodyWords(facts), [below], LEAST_SIZES.body, ruler, section);
  const cut = words === facts.head ? [] : [facts.head];
  return { marks: [...head.marks(section), ...marks], lost: [...cut, ...lost] };
}

interface Head {
  /** With the room below it, millimetres. */
  readonly height: number;
  readonly width: number;
  readonly isBeside: boolean;
  readonly marks: (section: Part) => readonly Mark[];
}

function headOf(facts: LabelFacts, room: Box, sizePt: number, ruler: TextRuler): Head | null {
  const beside = isBeside(room);
  const width = beside ? room.width * 0.45 : room.width;
  const isWide = (words: string) => ruler.width(words, sizePt, true) > width;
  const isName = facts.headIs === "name";
  if (isName ? facts.head.split(/\s+/).some(isWide) : isWide(facts.head)) return null;
  const lines = isName ? wrapText(facts.head, width, sizePt, ruler, true) : [facts.head];
  if (lines.length > MOST_NAME_LINES) return null;
  const head = headLines(lines, room, sizePt, facts, beside);
  const mostHigh = room.height * (beside ? 1 : isName ? 0.5 : 0.45);
  if (head.height > mostHigh) return null;
  const widest = Math.max(0, ...lines.map((words) => ruler.width(words, sizePt, true)));
  return { ...head, width: widest };
}

/** Room above for accents and below for descenders, so that no line touches the next. */
function headLines(
  lines: readonly string[],
  room: Box,
  sizePt: number,
  { headIs, head }: LabelFacts,
  beside = false,
): Head {
  const em = sizePt * MM_PER_POINT;
  const hasAccents = /\p{Lu}\p{M}/u.test(head.normalize("NFD"));
  const isPlain = headIs === "code" && /^[A-Z0-9 .-]*$/.test(head);
  const above = (hasAccents ? ABOVE_ACCENT : ABOVE) * em;
  const height = above + (lines.length - 1) * NAME_LINE * em + (isPlain ? 0 : BELOW * em);
  const top = room.top + (beside ? (room.height - height) / 2 : 0);
  return {
    height: height + (beside ? 0 : isPlain ? 1.5 : 0.5),
    width: room.width,
    isBeside: beside,
    marks: (within) =>
      inPart(
        { role: "heading", level: 1, within },
        lines.map((words, index) =>
          text({ x: room.left, y: top + above + index * NAME_LINE * em }, words, sizePt, {
            isBold: true,
          }),
        ),
      ),
  };
}

const BESIDE_GAP_MM = 4;

/** Where the words go: below the head, or beside it in two columns. */
function bodyBoxes(room: Box, head: Head): readonly Box[] {
  if (!head.isBeside) {
    return [{ ...room, top: room.top + head.height, height: room.height - head.height }];
  }
  const left = room.left + head.width + BESIDE_GAP_MM;
  const width = (room.left + room.width - left - BESIDE_GAP_MM) / 2;
  return [
    { ...room, left, width },
    { ...room, left: left + width + BESIDE_GAP_MM, width },
  ];
}

interface BodyWords {
  readonly words: string;
  readonly isBold: boolean;
}

function bodyWords({ second, warning, lines }: LabelFacts): readonly BodyWords[] {
  return [
    { words: second, isBold: true },
    { words: warning, isBold: true },
    ...lines.map((words) => ({ words, isBold: false })),
  ].filter(({ words }) => words !== "");
}

function fillBoxes(
  items: readonly BodyWords[],
  boxes: readonly Box[],
  sizePt: number,
  ruler: TextRuler,
  within: Part,
): SetWords {
  const marks: Mark[] = [];
  let next = 0;
  for (const box of boxes) {
    let top = box.top;
    for (; next < items.length; next += 1) {
      const { words, isBold } = items[next] as BodyWords;
      const lines = dottedLines(words, box.width, (part, width) =>
        wrapText(part, width, sizePt, ruler, isBold),
      );
      const height = lines.length * lineHeight(sizePt);
      if (top + height > box.top + box.height + 1e-6) break;
      marks.push(
        ...inPart(
          { role: "paragraph", within },
          textLines(lines, { x: box.left, y: top }, sizePt, isBold),
        ),
      );
      top += height;
    }
  }
  return { marks, lost: items.slice(next).map(({ words }) => words) };
}

const DOT = "  ·  ";

/** What stands between dots is broken at a dot first: a lot's code stays with its word. */
function dottedLines(
  words: string,
  width: number,
  wrap: (part: string, width: number) => readonly string[],
): readonly string[] {
  const lines: string[] = [];
  for (const part of words.split(DOT)) {
    const last = lines.at(-1);
    const joined = last === undefined ? [] : wrap(`${last}${DOT}${part}`, width);
    if (joined.length === 1) lines.splice(-1, 1, ...joined);
    else lines.push(...wrap(part, width));
  }
  return lines;
}
