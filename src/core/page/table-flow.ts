/**
 * A table as flow items: its head, then one item a row, so that it can run over columns and pages.
 * The head is repeated wherever the table goes on.
 */
import { type FlowItem, lineHeight, textLines, together, wrapText } from "./flow.ts";
import {
  type Box,
  DECORATION,
  type Mark,
  type Part,
  type Pen,
  type TextRuler,
  area,
  boxRing,
  inPart,
  line,
  text,
} from "./scene.ts";

export interface TableColumn {
  readonly title: string;
  /** Share of the table's width; a column is made wider where a word of it would be broken. */
  readonly share: number;
  /** The first line of a cell is bold. */
  readonly isBold?: boolean;
  /** Left empty between upright rules, to write in. */
  readonly isBlank?: boolean;
  /** A box to tick in every row; a cell that says TICKED has it ticked. */
  readonly isTick?: boolean;
  /** Figures stand at the right. */
  readonly align?: "right";
}

/** In a column of boxes: done. */
export const TICKED = "done";

/** Words, or several lines of words. */
export type TableCell = string | readonly string[];

export interface TableStyle {
  readonly sizePt: number;
  /** No row is lower: room for handwriting; mm. */
  readonly leastRowMm?: number;
  /** Stands above the head where the table goes on in another column. */
  readonly continued?: FlowItem;
}

const PAD_MM = 1;
/** Between the words of two columns, so that they are read apart. */
const GAP_MM = 2.4;
/** Figures at the right keep off the words of the next column. */
const RIGHT_MM = 1;
const TICK_MM = 3.2;
const RULE: Pen = { widthMm: 0.15 };
const HEAD_RULE: Pen = { widthMm: 0.35 };

/** @param rows one cell a column; a row may be shorter */
export function tableItems(
  columns: readonly TableColumn[],
  rows: readonly (readonly TableCell[])[],
  widthMm: number,
  style: TableStyle,
  ruler: TextRuler,
): readonly FlowItem[] {
  const widths = columnWidths(columns, rows, widthMm, style.sizePt, ruler);
  const table: Table = { columns, widths, widthMm, style, ruler, part: { role: "table" } };
  const head = headItem(table);
  const again = silent(style.continued ? together([style.continued, head]) : head);
  return [
    { ...head, isHeading: true },
    // The head is never left with one row.
    ...rows.map((cells, index) => ({
      ...rowItem(table, cells),
      again,
      isKeptWithNext: index === 0 && rows.length > 1,
    })),
  ];
}

/** The rows alone, where a heading says what they are; it stands again where they go on. */
export function tableRows(
  columns: readonly TableColumn[],
  rows: readonly (readonly TableCell[])[],
  widthMm: number,
  style: TableStyle,
  ruler: TextRuler,
): readonly FlowItem[] {
  const widths = columnWidths(columns, rows, widthMm, style.sizePt, ruler);
  const table: Table = { columns, widths, widthMm, style, ruler, part: null };
  const again = style.continued ? { again: silent(style.continued) } : {};
  return rows.map((cells) => ({ ...rowItem(table, cells), ...again }));
}

/** What is printed again is not read out again. */
function silent(item: FlowItem): FlowItem {
  return { ...item, draw: (left, top) => inPart(DECORATION, item.draw(left, top)) };
}

interface Table {
  /** Null: without a head the rows are read as words, one after the other. */
  readonly part: Part | null;
  readonly columns: readonly TableColumn[];
  readonly widths: readonly number[];
  readonly widthMm: number;
  readonly style: TableStyle;
  readonly ruler: TextRuler;
}

interface CellLine {
  readonly words: string;
  readonly isBold: boolean;
}

function linesOf(cell: TableCell): readonly string[] {
  return typeof cell === "string" ? [cell] : cell;
}

/** The shares, but none narrower than its longest word while others have width to spare. */
function columnWidths(
  columns: readonly TableColumn[],
  rows: readonly (readonly TableCell[])[],
  widthMm: number,
  sizePt: number,
  ruler: TextRuler,
): readonly number[] {
  const shares = columns.reduce((sum, { share }) => sum + share, 0);
  const wanted = columns.map(({ share }) => (share / shares) * widthMm);
  const least = columns.map((column, index) => {
    const words = rows.flatMap((row) =>
      linesOf(row[index] ?? "").flatMap((part, place) =>
        part.split(/\s+/).map((word) => ruler.width(word, sizePt, column.isBold && place === 0)),
      ),
    );
    const title = column.title.split(" ").map((word) => ruler.width(word, sizePt, true));
    const longest = [...words, ...title].reduce((most, width) => Math.max(most, width), 0);
    // A hair more, or its own width would not be enough for it.
    const inset = (column.isBlank === true ? PAD_MM : 0) + (column.align ? RIGHT_MM : 0);
    return Math.min(longest + 0.05 + GAP_MM + inset, widthMm / 3);
  });
  const missing = wanted.reduce(
    (sum, width, index) => sum + Math.max(0, (least[index] ?? 0) - width),
    0,
  );
  const spare = wanted.reduce(
    (sum, width, index) => sum + Math.max(0, width - (least[index] ?? 0)),
    0,
  );
  if (missing === 0 || spare === 0) return wanted;
  const taken = Math.min(1, missing / spare);
  const given = Math.min(1, spare / missing);
  return wanted.map((width, index) => {
    const low = least[index] ?? 0;
    return width < low ? width + (low - width) * given : width - (width - low) * taken;
  });
}

function headItem(table: Table): FlowItem {
  const { columns, widths, widthMm, style, ruler } = table;
  const titles = columns.map(({ title }, index) =>
    wrapText(title, (widths[index] ?? 0) - GAP_MM, style.sizePt, ruler, true).map(
      (words): CellLine => ({ words, isBold: true }),
    ),
  );
  const lines = Math.max(1, ...titles.map((cell) => cell.length));
  const height = lines * lineHeight(style.sizePt) + 2 * PAD_MM;
  return {
    height,
    draw: (left, top) => [
      // Titles stand on the rule, however many lines they take.
      ...inCells(table, "head cell", left, (x, index) => {
        const cell = titles[index] ?? [];
        const drop = (lines - cell.length) * lineHeight(style.sizePt);
        return cellMarks(table, cell, index, x, top + PAD_MM + drop);
      }),
      rule(left, widthMm, top + height, HEAD_RULE),
    ],
  };
}

function rowItem(table: Table, cells: readonly TableCell[]): FlowItem {
  const { columns, widths, widthMm, style, ruler } = table;
  const wrapped = columns.map((column, index) =>
    column.isTick === true
      ? []
      : linesOf(cells[index] ?? "").flatMap((words, place) => {
          const isBold = column.isBold === true && place === 0;
          return wrapText(words, (widths[index] ?? 0) - GAP_MM, style.sizePt, ruler, isBold).map(
            (part): CellLine => ({ words: part, isBold }),
          );
        }),
  );
  const lines = Math.max(1, ...wrapped.map((cell) => cell.length));
  const height = Math.max(
    lines * lineHeight(style.sizePt) + 2 * PAD_MM,
    style.leastRowMm ?? 0,
    columns.some(({ isTick }) => isTick === true) ? TICK_MM + 2 * PAD_MM : 0,
  );
  return {
    height,
    draw: (left, top) => [
      ...inCells(table, "cell", left, (x, index) =>
        cellMarks(table, wrapped[index] ?? [], index, x, top + PAD_MM),
      ),
      ...columnStarts(table, left).flatMap((x, index) =>
        writingMarks(columns[index] as TableColumn, x, top, height, cells[index] === TICKED),
      ),
      rule(left, widthMm, top + height, RULE),
    ],
  };
}

/** The cells of one row, each a part of the row and the row of the table. */
function inCells(
  table: Table,
  role: "head cell" | "cell",
  left: number,
  marksOf: (x: number, index: number) => readonly Mark[],
): readonly Mark[] {
  const { part, style } = table;
  const row: Part | null = part && { role: "row", within: part };
  return columnStarts(table, left).flatMap((x, index) => {
    const marks = marksOf(x, index);
    if (row === null) return marks;
    // An empty cell is a cell all the same, for who hears the row read.
    const held = marks.length === 0 ? [text({ x, y: 0 }, "", style.sizePt)] : marks;
    return inPart({ role, within: row }, held);
  });
}

function columnStarts({ widths }: Table, left: number): readonly number[] {
  let x = left;
  return widths.map((width) => {
    x += width;
    return x - width;
  });
}

function cellMarks(
  { columns, widths, style }: Table,
  cell: readonly CellLine[],
  index: number,
  x: number,
  top: number,
): readonly Mark[] {
  const column = columns[index];
  const right = x + (widths[index] ?? 0) - GAP_MM - RIGHT_MM;
  const inset = column?.isBlank === true ? PAD_MM : 0;
  return cell.flatMap(({ words, isBold }, place) => {
    const y = top + place * lineHeight(style.sizePt);
    const marks = textLines([words], { x: x + inset, y }, style.sizePt, isBold);
    if (column?.align !== "right") return marks;
    return marks.map((mark) =>
      mark.kind === "text" ? { ...mark, at: { ...mark.at, x: right }, align: "right" } : mark,
    );
  });
}

/** The box of a tick, and the rule at the left of a column to write in. */
function writingMarks(
  { isBlank, isTick }: TableColumn,
  x: number,
  top: number,
  height: number,
  isTicked: boolean,
): readonly Mark[] {
  if (isTick === true) {
    const box = { left: x + 0.2, top: top + PAD_MM, width: TICK_MM, height: TICK_MM };
    return [area(boxRing(box), null, { widthMm: 0.25 }), ...(isTicked ? [tickMark(box)] : [])];
  }
  if (isBlank !== true) return [];
  return [
    line(
      [
        { x, y: top },
        { x, y: top + height },
      ],
      RULE,
    ),
  ];
}

function tickMark({ left, top, width, height }: Box): Mark {
  const at = (x: number, y: number) => ({ x: left + x * width, y: top + y * height });
  return line([at(0.15, 0.5), at(0.4, 0.8), at(0.9, 0.1)], { widthMm: 0.45 });
}

function rule(left: number, widthMm: number, y: number, pen: Pen): Mark {
  return line(
    [
      { x: left, y },
      { x: left + widthMm, y },
    ],
    pen,
  );
}
