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

const COLUMNS: readonly TableColumn[] = [
  { title: "First seed likely ripe", share: 26 },
  { title: "Plot", share: 13, isBold: true },
  { title: "Variety, kind", share: 30, isBold: true },
  { title: "Plants", share: 11, align: "right" },
  { title: "How to take it", share: 46 },
  { title: "Harvested", share: 22, isBlank: true },
  { title: "Plants taken", share: 17, isBlank: true },
  { title: "Clean seed", share: 20, isBlank: true },
  { title: "Lot", share: 24, isBlank: true },
];
/** A line of handwriting. */
const LEAST_ROW_MM = 12;

const CAUTION =
  "Days are estimated from bloom: look before you cut. Take no seed from plants that are not true, from a torn cover, or from what was picked up off the ground.";

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
    "Harvest list",
    (width) => {
      const body = (words: string) => paragraph(words, width, TYPE_PT.body, setting.ruler);
      if (rows.length === 0) return [body("Nothing is kept for seed.")];
      return [...tableItems(COLUMNS, rows, width, style, setting.ruler), space(3), body(CAUTION)];
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
          ? `${shortDate(ripe.earliest)} or later`
          : `${shortDate(ripe.earliest)} to ${shortDate(ripe.latest)}`,
      ]
    : "not known";
  return [
    days,
    planting?.code ?? "",
    [variety?.name ?? "", kind.name],
    planting?.plants === undefined ? "" : String(planting.plants),
    taking,
  ];
}
