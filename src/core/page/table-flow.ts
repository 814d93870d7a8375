/** A table as flow items: its head, then one item a row, so that it can run over pages. */
import { type FlowItem, lineHeight, textLines, wrapText } from "./flow.ts";
import { type Part, type TextRuler, inPart, line, text } from "./scene.ts";

export interface TableColumn {
  readonly title: string;
  /** Share of the table's width. */
  readonly share: number;
}

const PAD_MM = 1;
/** Between the words of two columns, so that they are read apart. */
const GAP_MM = 2;

/** @param rows one text a column; a row may be shorter */
export function tableItems(
  columns: readonly TableColumn[],
  rows: readonly (readonly string[])[],
  widthMm: number,
  sizePt: number,
  ruler: TextRuler,
): readonly FlowItem[] {
  const shares = columns.reduce((sum, { share }) => sum + share, 0);
  const widths = columns.map(({ share }) => (share / shares) * widthMm);
  const table: Part = { role: "table" };
  const row = (cells: readonly string[], isBold: boolean): FlowItem => {
    const wrapped = widths.map((width, index) =>
      wrapText(cells[index] ?? "", width - GAP_MM, sizePt, ruler, isBold),
    );
    const lines = Math.max(1, ...wrapped.map((cell) => cell.length));
    const height = lines * lineHeight(sizePt) + 2 * PAD_MM;
    return {
      height,
      isHeading: isBold,
      draw: (left, top) => {
        let x = left;
        const rowPart: Part = { role: "row", within: table };
        const role = isBold ? "head cell" : "cell";
        return [
          ...wrapped.flatMap((cell, index) => {
            const at = { x, y: top + PAD_MM };
            x += widths[index] ?? 0;
            // An empty cell is a cell all the same, for who hears the row read.
            const marks =
              cell.length === 0 ? [text(at, "", sizePt)] : textLines(cell, at, sizePt, isBold);
            return inPart({ role, within: rowPart }, marks);
          }),
          line(
            [
              { x: left, y: top + height },
              { x: left + widthMm, y: top + height },
            ],
            { widthMm: isBold ? 0.35 : 0.15 },
          ),
        ];
      },
    };
  };
  return [
    row(
      columns.map(({ title }) => title),
      true,
    ),
    ...rows.map((cells) => row(cells, false)),
  ];
}
