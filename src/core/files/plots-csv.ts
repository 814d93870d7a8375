/** Every planting of a layout as one row for a spreadsheet, in the order of the plot list. */
import { outlineArea, outlineOf, shapeCentre } from "../geometry/outline.ts";
import { isoFromDay } from "../model/day.ts";
import { type CsvValue, csvFile } from "../formats/csv-file.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { lotCodesToSow } from "../lots/lot-book.ts";
import { byCode } from "../map/plot-rows.ts";
import { walkingNumbers } from "../fieldwork/walking-order.ts";

const HEADINGS = [
  "code",
  "bed",
  "walking number",
  "kind",
  "botanical name",
  "variety",
  "lot",
  "purpose",
  "flowering",
  "cover",
  "plants",
  "rows",
  "width m",
  "length m",
  "area m2",
  "middle x m",
  "middle y m",
  "start method",
  "start date",
  "sown under glass",
  "cleared",
  "first bloom",
  "last bloom",
  "isolation m",
  "note",
];

/** Lengths in metres on the sheet, dates as YYYY-MM-DD; the bloom is the whole likely span. */
export function plotsCsv({ plan, layout, result, book }: CheckedLayout): string {
  const varieties = new Map(plan.varieties.map((variety) => [variety.id, variety]));
  const beds = new Map(layout.beds.map((bed) => [bed.id, bed.code]));
  const walk = walkingNumbers(layout);
  const rows = byCode(layout.plantings).map((planting): readonly CsvValue[] => {
    const variety = varieties.get(planting.variety);
    const kind = book.kind(variety?.kind ?? "");
    const stand = result.standById.get(planting.id);
    const { outline, start } = planting;
    const middle = shapeCentre(outline);
    const isRectangle = outline.shape === "rectangle";
    const bloom = stand?.shedsPollen === true ? stand.bloom?.outer : undefined;
    return [
      planting.code,
      beds.get(planting.bed ?? ""),
      walk.get(planting.id),
      kind?.name ?? variety?.kind,
      kind?.botanicalName,
      variety?.name,
      lotCodesToSow(plan, planting, variety),
      planting.purpose,
      planting.flowering,
      planting.cover,
      planting.plants,
      planting.rows,
      isRectangle ? outline.widthM : null,
      isRectangle ? outline.lengthM : null,
      outlineArea(outlineOf(outline)),
      middle.x,
      middle.y,
      start?.method,
      start && isoFromDay(start.date),
      start?.sownUnderGlass === undefined ? null : isoFromDay(start.sownUnderGlass),
      planting.end === undefined ? null : isoFromDay(planting.end),
      bloom && isoFromDay(bloom.first),
      bloom && isoFromDay(bloom.last),
      stand?.isSeedParent ? stand.requirement?.metres : null,
      planting.note,
    ];
  });
  return csvFile(HEADINGS, rows);
}
