/** The harvest list: what is kept for seed in the order in which it ripens, with room to write. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { compareText } from "../checks/finding.ts";
import type { Stand } from "../checks/stand.ts";
import { seedTakingLines } from "../fieldwork/seed-taking-lines.ts";
import { type ListPageSetting, flowPages } from "../map/list-pages.ts";
import { TYPE_PT } from "../map/map-style.ts";
import { shortDate } from "../model/day.ts";
import { paragraph, space } from "../page/flow.ts";
import type { Page } from "../page/scene.ts";
import { type TableCell, type TableColumn, tableItems } from "../page/table-flow.ts";
import { harvestWords as words } from "./page-words.ts";

const COLUMNS: readonly TableColumn[] = [
  { title: words.ripe, share: 26 },
  { title: words.plot, share: 13, isBold: true },
  { title: words.variety, share: 30, isBold: true },
  { title: words.plants, share: 11, align: "right" },
  { title: words.how, share: 46 },
  { title: words.harvested, share: 22, isBlank: true },
  { title: words.taken, share: 17, isBlank: true },
  { title: words.seed, share: 20, isBlank: true },
  { title: words.lot, share: 24, isBlank: true },
];
/** A line of handwriting. */
const LEAST_ROW_MM = 12;

export function harvestPages(input: CheckedLayout, setting: ListPageSetting): readonly Page[] {
  const taking = seedTakingLines(input.result.stands);
  const ripe = ({ ripe: day }: Stand) => day?.likely ?? Infinity;
  const rows = input.result.stands
    .filter((stand) => stand.isSeedParent && stand.planting !== undefined)
    .toSorted(
      (a, b) => ripe(a) - ripe(b) || compareText(a.planting?.code ?? "", b.planting?.code ?? ""),
    )
    .map((stand) => rowCells(stand, taking.get(stand.id) ?? ""));
  const style = { sizePt: TYPE_PT.body, leastRowMm: LEAST_ROW_MM };
  return flowPages(
    words.title,
    (width) => {
      const body = (text: string) => paragraph(text, width, TYPE_PT.body, setting.ruler);
      if (rows.length === 0) return [body(words.nothing)];
      return [
        ...tableItems(COLUMNS, rows, width, style, setting.ruler),
        space(3),
        body(words.caution),
      ];
    },
    setting,
    1,
  );
}

function rowCells({ planting, variety, kind, ripe }: Stand, taking: string): readonly TableCell[] {
  const days = ripe
    ? [
        shortDate(ripe.likely),
        ripe.isBeyond
          ? words.orLater(shortDate(ripe.earliest))
          : words.span(shortDate(ripe.earliest), shortDate(ripe.latest)),
      ]
    : words.notKnown;
  return [
    days,
    planting?.code ?? "",
    [variety?.name ?? "", kind.name],
    planting?.plants === undefined ? "" : String(planting.plants),
    taking,
  ];
}
