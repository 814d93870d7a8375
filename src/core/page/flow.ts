/** Words and small drawings set one under the other into columns. */
import {
  type Box,
  MM_PER_POINT,
  type Mark,
  type PagePoint,
  type Part,
  type TextRuler,
  capHeight,
  inPart,
  text,
} from "./scene.ts";

/** Something of a known height, drawn wherever it lands. */
export interface FlowItem {
  readonly height: number;
  readonly draw: (left: number, top: number) => readonly Mark[];
  /** Tells items of a key apart. */
  readonly name?: string;
  /** A heading is never left alone at the foot of a column. */
  readonly isHeading?: boolean;
  /** Stays in the column of what follows, as a heading does, without a heading's room above. */
  readonly isKeptWithNext?: boolean;
  /** Left out at the top of a column. */
  readonly isSpace?: boolean;
  /** Drawn above this item where it begins a column: the head of a table that goes on there. */
  readonly again?: FlowItem;
}

export interface Flowed {
  readonly marks: readonly Mark[];
  /** What found no room. */
  readonly rest: readonly FlowItem[];
  /** How far down the fullest column is filled, millimetres from its top. */
  readonly filledMm: number;
}

const LINE_HEIGHT = 1.3;

export function lineHeight(sizePt: number): number {
  return sizePt * MM_PER_POINT * LINE_HEIGHT;
}

/** Fills the columns in turn. An item higher than a whole empty column is set all the same. */
export function flowInto(items: readonly FlowItem[], columns: readonly Box[]): Flowed {
  const marks: Mark[] = [];
  let next = 0;
  let filledMm = 0;
  for (const column of columns) {
    let top = column.top;
    const bottom = column.top + column.height;
    while (next < items.length) {
      const item = items[next] as FlowItem;
      if (item.isSpace && top === column.top) {
        next += 1;
        continue;
      }
      if (top + keptHeight(items, next) > bottom + 1e-6 && top > column.top) break;
      if (item.again && top === column.top) {
        marks.push(...item.again.draw(column.left, top));
        top += item.again.height;
      }
      if (item.isHeading && top > column.top) top += ABOVE_HEADING_MM;
      marks.push(...item.draw(column.left, top));
      top += item.height;
      next += 1;
      filledMm = Math.max(filledMm, top - column.top);
    }
  }
  return { marks, rest: items.slice(next), filledMm };
}

/** Height of an item with all that must not be parted from it, millimetres. */
function keptHeight(items: readonly FlowItem[], from: number): number {
  let height = 0;
  for (let index = from; index < items.length; index += 1) {
    const item = items[index] as FlowItem;
    height +=
      item.height + (item.isHeading && (index > from || items[index + 1]) ? ABOVE_HEADING_MM : 0);
    if (!item.isHeading && !item.isKeptWithNext) break;
  }
  return height;
}

/** Breaks words into lines that fit a width; a word too long is broken anywhere. */
export function wrapText(
  words: string,
  widthMm: number,
  sizePt: number,
  ruler: TextRuler,
  isBold = false,
): readonly string[] {
  const fits = (line: string) => ruler.width(line, sizePt, isBold) <= widthMm;
  const lines: string[] = [];
  let current = "";
  for (const word of plainLine(words).split(" ")) {
    const longer = current === "" ? word : `${current} ${word}`;
    if (fits(longer)) {
      current = longer;
      continue;
    }
    if (current !== "") lines.push(current);
    current = "";
    for (const char of word) {
      if (current !== "" && !fits(current + char)) {
        lines.push(current);
        current = "";
      }
      current += char;
    }
  }
  return current === "" ? lines : [...lines, current];
}

/** One line without line breaks, tabs and other control characters. */
export function plainLine(words: string): string {
  return words.replace(/[\s\p{Cc}]+/gu, " ").trim();
}

/** The words cut to a width, ending in an ellipsis when something is missing. */
export function cutToWidth(
  words: string,
  widthMm: number,
  sizePt: number,
  ruler: TextRuler,
  isBold = false,
): string {
  const plain = plainLine(words);
  if (ruler.width(plain, sizePt, isBold) <= widthMm) return plain;
  const chars = Array.from(plain);
  while (chars.length > 0 && ruler.width(`${chars.join("")}…`, sizePt, isBold) > widthMm)
    chars.pop();
  return `${chars.join("").trimEnd()}…`;
}

/** Lines set from a top edge, read as one paragraph. */
export function textLines(
  lines: readonly string[],
  { x, y }: PagePoint,
  sizePt: number,
  isBold = false,
): readonly Mark[] {
  const step = lineHeight(sizePt);
  const first = y + (step + capHeight(sizePt)) / 2;
  return inPart(
    { role: "paragraph" },
    lines.map((words, index) => text({ x, y: first + index * step }, words, sizePt, { isBold })),
  );
}

/** A paragraph as a flow item, with room after it. */
export function paragraph(
  words: string,
  widthMm: number,
  sizePt: number,
  ruler: TextRuler,
  style: { readonly isBold?: boolean; readonly after?: number } = {},
): FlowItem {
  const lines = wrapText(words, widthMm, sizePt, ruler, style.isBold);
  return {
    height: lines.length * lineHeight(sizePt) + (style.after ?? 1),
    draw: (left, top) => textLines(lines, { x: left, y: top }, sizePt, style.isBold),
  };
}

const ABOVE_HEADING_MM = 1.6;
const SUBHEADING: Part = { role: "heading", level: 3 };

/** Draws the same as one part of the document, each time a new one. */
function drawnIn(part: Part, draw: FlowItem["draw"]): FlowItem["draw"] {
  return (left, top) => inPart({ ...part }, draw(left, top));
}

/** A heading over what follows, with some room above unless it begins a column. */
export function heading(
  words: string,
  widthMm: number,
  sizePt: number,
  ruler: TextRuler,
): FlowItem {
  const item = paragraph(words, widthMm, sizePt, ruler, { isBold: true, after: 1 });
  return { ...item, draw: drawnIn(SUBHEADING, item.draw), isHeading: true };
}

/** Several items as one that is never parted. @param gapMm between them */
export function together(items: readonly FlowItem[], gapMm = 0): FlowItem {
  return {
    height: items.reduce((sum, { height }) => sum + height, 0) + gapMm * (items.length - 1),
    draw: (left, top) => {
      let y = top;
      return items.flatMap((item) => {
        const marks = item.draw(left, y);
        y += item.height + gapMm;
        return marks;
      });
    },
  };
}

/** Empty room between two items; none at the top of a column. */
export function space(height: number): FlowItem {
  return { height, draw: () => [], isSpace: true };
}
