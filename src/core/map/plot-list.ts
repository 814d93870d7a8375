/** The plot list: one row per planting, with room to write in the field. Headings on every page. */
import { lineHeight, textLines, wrapText } from "../page/flow.ts";
import { TYPE_PT } from "./map-style.ts";
import type { PlotRow } from "./plot-rows.ts";
import { type Box, type Mark, type Pen, type TextRuler, line } from "../page/scene.ts";

interface Column {
  readonly title: string;
  /** Share of the table's width. */
  readonly share: number;
  /** Lines of a cell; the first is bold where `isBold`. Absent: left blank to write in. */
  readonly cell?: (row: PlotRow) => readonly string[];
  readonly isBold?: boolean;
}

const PAD_MM = 1;
/** Lowest row: room for a line of handwriting. */
const LOWEST_ROW_MM = 9;
const HEAD_MM = 10;

const plot: Column = {
  title: "Plot, square, walk",
  share: 16,
  cell: (row) => [row.code, `${row.square}${row.walk === "" ? "" : ` · ${row.walk}`}`],
  isBold: true,
};
const variety: Column = {
  title: "Variety, kind",
  share: 35,
  cell: (row) => [row.variety, row.kind],
  isBold: true,
};
const purpose: Column = { title: "For", share: 13, cell: (row) => row.purpose.split(", ") };
const plants: Column = { title: "Plants, size", share: 26, cell: (row) => [row.plants, row.size] };
const dates: Column = {
  title: "Start, expected bloom",
  share: 31,
  cell: (row) => [row.start, row.bloom],
};
const nearest: Column = {
  title: "Nearest that could cross",
  share: 32,
  cell: (row) => (row.nearest === "" ? ["none here"] : [row.nearest, row.nearestDistance]),
};

function blanks(share: number, titles: readonly string[]): readonly Column[] {
  return titles.map((title) => ({ title, share }));
}

function columnsFor(widthMm: number): readonly Column[] {
  const facts = [plot, variety, purpose, plants, dates, nearest];
  if (widthMm >= 240) {
    const wanted = ["Started", "Up", "First bloom", "Rogued", "Harvest"];
    return [...facts, ...blanks(16, wanted), ...blanks(34, ["Notes"])];
  }
  return widthMm >= 180
    ? [...facts, ...blanks(16, ["Started", "Rogued", "Harvest"])]
    : [...facts, ...blanks(16, ["Notes"])];
}

/** Fills pages of a given room with the rows; marks for each page. */
export function plotListPages(
  rows: readonly PlotRow[],
  box: Box,
  ruler: TextRuler,
): readonly (readonly Mark[])[] {
  const columns = placed(columnsFor(box.width), box);
  const pages: Mark[][] = [];
  let top = Infinity;
  for (const row of rows) {
    const cells = columns.map(({ column, width }) => cellLines(row, column, width, ruler));
    const lines = Math.max(...cells.map((cell) => cell.length));
    const height = Math.max(LOWEST_ROW_MM, lines * lineHeight(TYPE_PT.body) + 2 * PAD_MM);
    if (top + height > box.top + box.height) {
      pages.push([...headMarks(columns, box, ruler)]);
      top = box.top + HEAD_MM;
    }
    const page = pages.at(-1) as Mark[];
    columns.forEach(({ left }, index) => {
      cells[index]?.forEach(({ words, isBold }, place) => {
        const y = top + PAD_MM + place * lineHeight(TYPE_PT.body);
        page.push(...textLines([words], { x: left + PAD_MM, y }, TYPE_PT.body, isBold));
      });
    });
    page.push(...rowRules(columns, box, top, height));
    top += height;
  }
  return pages;
}

interface PlacedColumn {
  readonly column: Column;
  readonly left: number;
  readonly width: number;
}

function placed(columns: readonly Column[], box: Box): readonly PlacedColumn[] {
  const shares = columns.reduce((sum, column) => sum + column.share, 0);
  let left = box.left;
  return columns.map((column) => {
    const width = (column.share / shares) * box.width;
    left += width;
    return { column, left: left - width, width };
  });
}

function cellLines(row: PlotRow, column: Column, width: number, ruler: TextRuler) {
  return (column.cell?.(row) ?? []).flatMap((words, index) => {
    const isBold = column.isBold === true && index === 0;
    return wrapText(words, width - 2 * PAD_MM, TYPE_PT.body, ruler, isBold).map((part) => ({
      words: part,
      isBold,
    }));
  });
}

function headMarks(columns: readonly PlacedColumn[], box: Box, ruler: TextRuler): readonly Mark[] {
  const bottom = box.top + HEAD_MM;
  return [
    ...columns.flatMap(({ column, left, width }) => {
      const lines = wrapText(column.title, width - 2 * PAD_MM, TYPE_PT.small, ruler, true);
      const top = bottom - PAD_MM - lines.length * lineHeight(TYPE_PT.small);
      return textLines(lines, { x: left + PAD_MM, y: top }, TYPE_PT.small, true);
    }),
    line(
      [
        { x: box.left, y: bottom },
        { x: box.left + box.width, y: bottom },
      ],
      { widthMm: 0.4 },
    ),
  ];
}

function rowRules(
  columns: readonly PlacedColumn[],
  box: Box,
  top: number,
  height: number,
): readonly Mark[] {
  const pen: Pen = { widthMm: 0.15 };
  const level = top + height;
  return [
    line(
      [
        { x: box.left, y: level },
        { x: box.left + box.width, y: level },
      ],
      pen,
    ),
    // Upright rules only between the columns to write in.
    ...columns
      .filter(({ column }) => column.cell === undefined)
      .map(({ left }) =>
        line(
          [
            { x: left, y: top },
            { x: left, y: level },
          ],
          pen,
        ),
      ),
  ];
}
