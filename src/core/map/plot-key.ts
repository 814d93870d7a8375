/**
 * The plots in the order of the walk, small, beside the map: with it one sheet does for a garden.
 * What it leaves out stands in the plot list.
 */
import { TYPE_PT } from "./map-style.ts";
import type { PlotRow } from "./plot-rows.ts";
import { type FlowItem, heading, lineHeight, textLines, wrapText } from "../page/flow.ts";
import type { TextRuler } from "../page/scene.ts";
import { sheetWords as words } from "./map-words.ts";

const INDENT_MM = 5;
const AFTER_MM = 0.7;

/** @param rows in the order of the walk */
export function plotKeyItems(
  rows: readonly PlotRow[],
  widthMm: number,
  ruler: TextRuler,
): readonly FlowItem[] {
  if (rows.length === 0) return [];
  return [
    heading(words.plots, widthMm, TYPE_PT.body, ruler),
    ...rows.map((row) => plotItem(row, widthMm, ruler)),
  ];
}

function plotItem(row: PlotRow, widthMm: number, ruler: TextRuler): FlowItem {
  const sizePt = TYPE_PT.small;
  const width = widthMm - INDENT_MM;
  const variety = [row.variety, ...(row.isEaten ? [words.toEat] : [])].join(", ");
  const name = wrapText(`${row.code}  ${variety}`, width, sizePt, ruler, true);
  const facts = wrapText(
    [row.kind, row.start, plantsWords(row)].filter((part) => part !== "").join(", "),
    width,
    sizePt,
    ruler,
  );
  const step = lineHeight(sizePt);
  return {
    height: (name.length + facts.length) * step + AFTER_MM,
    draw: (left, top) => [
      ...textLines([row.walk], { x: left, y: top }, sizePt),
      ...textLines(name, { x: left + INDENT_MM, y: top }, sizePt, true),
      ...textLines(facts, { x: left + INDENT_MM, y: top + name.length * step }, sizePt),
    ],
  };
}

/** `90 plants`; its rows where plants are not counted. */
function plantsWords({ plants, plantCount }: PlotRow): string {
  return plantCount === null ? plants : words.plants(plantCount);
}
