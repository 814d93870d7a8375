/** A table as flow items: its head, then one item a row, so that it can run over pages. */
import { type FlowItem, lineHeight, textLines, wrapText } from "./flow.ts";
import { type TextRuler, line } from "./scene.ts";

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
  const row = (cells: readonly string[], isBold: boolean): FlowItem => {
    const wrapped = cells.map((words, index) =>
      wrapText(words, (widths[index] ?? 0) - GAP_MM, sizePt, ruler, isBold),
    );
    const lines = Math.max(1, ...wrapped.map((cell) => cell.length));
    const height = lines * lineHeight(sizePt) + 2 * PAD_MM;
    return {
      height,
      isHeading: isBold,
      draw: (left, top) => {
        let x = left;
        return [
          ...wrapped.flatMap((cell, index) => {
            const marks = textLines(cell, { x, y: top + PAD_MM }, sizePt, isBold);
            x += widths[index] ?? 0;
            return marks;
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
