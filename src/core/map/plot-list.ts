/** The plot list: one row per planting in the order of the walk, with room to write in the field. */
import type { FlowItem } from "../page/flow.ts";
import { type ListPageSetting, flowPages, roomBelowHeader } from "./list-pages.ts";
import { TYPE_PT } from "./map-style.ts";
import type { PlotRow } from "./plot-rows.ts";
import type { Page } from "../page/scene.ts";
import { type TableCell, type TableColumn, tableItems } from "../page/table-flow.ts";

interface ListColumn extends TableColumn {
  readonly cell?: (row: PlotRow) => TableCell;
}

/** Lowest row: a line of handwriting. Where rows are few they share out the page up to the most. */
const ROW_MM = { least: 10, most: 16 } as const;
/** The head of the table, about. */
const HEAD_MM = 12;

const FACTS: readonly ListColumn[] = [
  { title: "Walk", share: 11, align: "right", cell: ({ walk }) => walk },
  { title: "Plot", share: 15, isBold: true, cell: ({ code }) => code },
  { title: "Square", share: 12, cell: ({ square }) => square },
  {
    title: "Variety, kind",
    share: 34,
    isBold: true,
    cell: ({ variety, kind }) => [variety, kind],
  },
  { title: "For", share: 13, cell: ({ purpose }) => purpose.split(", ") },
  { title: "Lot", share: 16, cell: ({ lot }) => lot },
  { title: "Plants, size", share: 24, cell: ({ plants, size }) => [plants, size] },
  { title: "Start, expected bloom", share: 31, cell: ({ start, bloom }) => [start, bloom] },
  {
    title: "Nearest that could cross",
    share: 30,
    cell: ({ nearest, nearestDistance }) =>
      nearest === "" ? ["none here"] : [nearest, nearestDistance],
  },
];

function blanks(share: number, titles: readonly string[]): readonly ListColumn[] {
  return titles.map((title) => ({ title, share, isBlank: true }));
}

/** Narrow paper leaves room for fewer columns to write in, and on the narrowest for fewer facts. */
function columnsFor(widthMm: number): readonly ListColumn[] {
  if (widthMm >= 240) {
    const wanted = ["Started", "Up", "First bloom", "Rogued", "Harvest"];
    return [...FACTS, ...blanks(15, wanted), ...blanks(30, ["Notes"])];
  }
  const facts = FACTS.filter(({ title }) => title !== "Square");
  return widthMm >= 180
    ? [...facts, ...blanks(16, ["Started", "Rogued", "Harvest"])]
    : [...facts.filter(({ title }) => title !== "For"), ...blanks(16, ["Notes"])];
}

export function plotPages(rows: readonly PlotRow[], setting: ListPageSetting): readonly Page[] {
  if (rows.length === 0) return [];
  const { height } = roomBelowHeader(setting.frame);
  const share = (height - HEAD_MM) / rows.length - 0.01;
  const leastRowMm = Math.min(Math.max(share, ROW_MM.least), ROW_MM.most);
  const items = (widthMm: number): readonly FlowItem[] => {
    const columns = columnsFor(widthMm);
    return tableItems(
      columns,
      rows.map((row) => columns.map(({ cell }) => cell?.(row) ?? "")),
      widthMm,
      { sizePt: TYPE_PT.body, leastRowMm },
      setting.ruler,
    );
  };
  return flowPages("Plot list", items, setting, 1);
}
