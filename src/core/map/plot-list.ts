/** The plot list: one row per planting in the order of the walk, with room to write in the field. */
import type { FlowItem } from "../page/flow.ts";
import { type ListPageSetting, flowPages, roomBelowHeader } from "./list-pages.ts";
import { TYPE_PT } from "./map-style.ts";
import type { PlotRow } from "./plot-rows.ts";
import type { Page } from "../page/scene.ts";
import { type TableCell, type TableColumn, tableItems } from "../page/table-flow.ts";
import { plotListWords as words } from "./map-words.ts";

interface ListColumn extends TableColumn {
  /** What narrow paper has no room for. */
  readonly needsRoom?: "square" | "use";
  readonly cell?: (row: PlotRow) => TableCell;
}

/** Lowest row: a line of handwriting. Where rows are few they share out the page up to the most. */
const ROW_MM = { least: 10, most: 16 } as const;
/** The head of the table, about. */
const HEAD_MM = 12;

const FACTS: readonly ListColumn[] = [
  { title: words.walk, share: 11, align: "right", cell: ({ walk }) => walk },
  { title: words.plot, share: 15, isBold: true, cell: ({ code }) => code },
  { title: words.square, needsRoom: "square", share: 12, cell: ({ square }) => square },
  {
    title: words.variety,
    share: 34,
    isBold: true,
    cell: ({ variety, kind }) => [variety, kind],
  },
  { title: words.use, needsRoom: "use", share: 13, cell: ({ purpose }) => purpose },
  { title: words.lot, share: 16, cell: ({ lot }) => lot },
  { title: words.plants, share: 24, cell: ({ plants, size }) => [plants, size] },
  { title: words.start, share: 31, cell: ({ start, bloom }) => [start, bloom] },
  {
    title: words.nearest,
    share: 30,
    cell: ({ nearest, nearestDistance }) =>
      nearest === "" ? [words.noneHere] : [nearest, nearestDistance],
  },
];

function blanks(share: number, titles: readonly string[]): readonly ListColumn[] {
  return titles.map((title) => ({ title, share, isBlank: true }));
}

/** Narrow paper leaves room for fewer columns to write in, and on the narrowest for fewer facts. */
function columnsFor(widthMm: number): readonly ListColumn[] {
  if (widthMm >= 240) {
    const wanted = [words.started, words.up, words.firstBloom, words.rogued, words.harvest];
    return [...FACTS, ...blanks(15, wanted), ...blanks(30, [words.notes])];
  }
  const facts = FACTS.filter(({ needsRoom }) => needsRoom !== "square");
  return widthMm >= 180
    ? [...facts, ...blanks(16, [words.started, words.rogued, words.harvest])]
    : [...facts.filter(({ needsRoom }) => needsRoom !== "use"), ...blanks(16, [words.notes])];
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
  return flowPages(words.title, items, setting, 1);
}
