/** The sowing list as one row for each planting and lot, in order of sowing. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { type CsvValue, csvFile } from "../formats/csv-file.ts";
import { shelfPlace } from "../lots/estimate.ts";
import { type SowingRow, sowingRows } from "../lots/sowing.ts";
import { isSameVariety, varietyIndex } from "../lots/variety-index.ts";
import { isoFromDay } from "../model/day.ts";
import type { Plan, Variety } from "../model/plan.ts";

const HEADINGS = [
  "date",
  "method",
  "set out",
  "plot",
  "bed",
  "variety",
  "kind",
  "plants",
  "lot",
  "lot named",
  "lot of another variety",
  "kept at",
  "seeds",
  "grams",
  "treated",
  "emergence",
  "spare",
  "seeds missing",
  "sown",
];

/** How the date is meant. */
function methodWords({ trayDay }: SowingRow): string {
  switch (trayDay) {
    case null:
      return "in place";
    case "given":
      return "under glass";
    case "counted back":
      return "under glass, about this day";
    case "not known":
      return "in trays, set out on the date";
  }
}

/** The cell "sown" is left to be filled in. Dates as YYYY-MM-DD, grams of the lot's own count. */
export function sowingCsv({ plan, layout, book }: CheckedLayout): string {
  const beds = new Map(layout.beds.map((bed) => [bed.id, bed.code]));
  const varieties = varietyIndex(plan.varieties);
  const rows = sowingRows(plan, layout, book).flatMap((row) =>
    sowingCells(row, plan, beds, varieties),
  );
  return csvFile(HEADINGS, rows);
}

function sowingCells(
  row: SowingRow,
  plan: Plan,
  beds: ReadonlyMap<string, string>,
  varieties: ReadonlyMap<string, Variety>,
): readonly (readonly CsvValue[])[] {
  const { planting, variety, kind, day, parts } = row;
  const start: readonly CsvValue[] = [
    day === null ? null : isoFromDay(day),
    methodWords(row),
    row.inTrays && planting.start ? isoFromDay(planting.start.date) : null,
    planting.code,
    beds.get(planting.bed ?? ""),
    variety.name,
    kind.name,
    planting.plants,
  ];
  const end: readonly CsvValue[] = [row.emergence, row.spare, row.missingSeeds || null, ""];
  const named = row.isNamed ? "yes" : "proposed";
  if (parts.length === 0) return [[...start, "", "", "", "", row.seeds, null, "", ...end]];
  const otherName = (id: string) => {
    const other = varieties.get(id);
    return other && !isSameVariety(other, variety) ? other.name : "";
  };
  return parts.map(({ lot, seeds, grams }, index) => [
    ...start,
    lot.code,
    named,
    otherName(lot.variety),
    shelfPlace(lot, plan.storagePlaces)?.name,
    seeds,
    grams,
    lot.treatedWith ?? (lot.treated === true ? "yes" : ""),
    ...(index === 0 ? end : [row.emergence, row.spare, null, ""]),
  ]);
}
