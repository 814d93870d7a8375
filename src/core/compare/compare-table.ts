/** The measures of layouts as a table on paper, the better ones bold with a tick. */
import type { Comparison, Measure } from "./compare-layouts.ts";
import type { LengthUnit } from "../model/length.ts";
import { comparedWords, measureText, measureTitle } from "./compare-words.ts";
import { type FlowItem, lineHeight, textLines, wrapText } from "../page/flow.ts";
import { TYPE_PT } from "../map/map-style.ts";
import { type Mark, type TextRuler, line } from "../page/scene.ts";

/** Columns of values in one table; more layouts go into tables below. */
const MOST_COLUMNS = 6;
/** The first column is so many times as wide as one of values. */
const TITLE_SHARE = 2;
const PAD_MM = 1;
const TICK_MM = 3.4;

export function measureItems(
  comparison: Comparison,
  unit: LengthUnit,
  widthMm: number,
  ruler: TextRuler,
): readonly FlowItem[] {
  const count = comparison.layouts.length;
  const tables = Math.ceil(count / MOST_COLUMNS);
  return Array.from({ length: tables }, (_, index) => index * MOST_COLUMNS).flatMap((from) => {
    const to = Math.min(count, from + MOST_COLUMNS);
    const row = rowMaker(widthMm, to - from, ruler);
    return [
      row(
        [comparedWords.measure, ...comparison.layouts.slice(from, to).map(({ name }) => name)].map(
          (words) => ({
            words,
            isBold: true,
            isTicked: false,
          }),
        ),
        true,
      ),
      ...comparison.measures.map((measure) =>
        row(cells(measure, comparison, unit, from, to), false),
      ),
    ];
  });
}

interface Cell {
  readonly words: string;
  readonly isBold: boolean;
  readonly isTicked: boolean;
}

function cells(
  measure: Measure,
  comparison: Comparison,
  unit: LengthUnit,
  from: number,
  to: number,
): readonly Cell[] {
  const values = measure.values.slice(from, to).map((value, index): Cell => {
    const isBest = measure.isBest[from + index] === true;
    return { words: measureText(value, measure, unit), isBold: isBest, isTicked: isBest };
  });
  const title = measureTitle(measure.name, comparison);
  return [{ words: title, isBold: false, isTicked: false }, ...values];
}

function rowMaker(widthMm: number, columns: number, ruler: TextRuler) {
  const unitMm = widthMm / (columns + TITLE_SHARE);
  const widthOf = (index: number) => unitMm * (index === 0 ? TITLE_SHARE : 1);
  const leftOf = (index: number) => (index === 0 ? 0 : unitMm * (TITLE_SHARE + index - 1));
  const size = TYPE_PT.body;
  return (row: readonly Cell[], isHead: boolean): FlowItem => {
    const wrapped = row.map(({ words, isBold, isTicked }, index) =>
      wrapText(words, widthOf(index) - PAD_MM - (isTicked ? TICK_MM + 1 : 0), size, ruler, isBold),
    );
    const lines = Math.max(1, ...wrapped.map((cell) => cell.length));
    const height = lines * lineHeight(size) + 2 * PAD_MM;
    return {
      height,
      isHeading: isHead,
      draw: (left, top) => [
        ...row.flatMap(({ isBold, isTicked }, index): readonly Mark[] => {
          const words = wrapped[index] ?? [];
          const x = left + leftOf(index);
          const end = x + ruler.width(words[0] ?? "", size, isBold);
          return [
            ...textLines(words, { x, y: top + PAD_MM }, size, isBold),
            ...(isTicked ? [tick(end + 1, top + PAD_MM)] : []),
          ];
        }),
        line(
          [
            { x: left, y: top + height },
            { x: left + widthMm, y: top + height },
          ],
          { widthMm: isHead ? 0.35 : 0.15 },
        ),
      ],
    };
  };
}

/** Drawn, as not every typeface has the sign. */
function tick(left: number, top: number): Mark {
  const foot = top + lineHeight(TYPE_PT.body) - 1;
  return line(
    [
      { x: left, y: foot - 1.1 },
      { x: left + 1, y: foot },
      { x: left + 2.6, y: foot - 2.4 },
    ],
    { widthMm: 0.5 },
  );
}
