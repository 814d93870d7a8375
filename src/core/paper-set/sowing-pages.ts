/** The sowing list: in order of sowing, which lot from which place, how much, where, a box to tick. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { shelfPlace } from "../lots/estimate.ts";
import { gramsText, treatmentWords, sowingDayWords } from "../lots/lot-words.ts";
import { type SowingRow, sowingRows } from "../lots/sowing.ts";
import { type ListPageSetting, flowPages } from "../map/list-pages.ts";
import { TYPE_PT } from "../map/map-style.ts";
import { mapTitle } from "../map/map-text.ts";
import { isSameVariety, varietyIndex } from "../lots/variety-index.ts";
import type { Plan, Variety } from "../model/plan.ts";
import { paragraph, space } from "../page/flow.ts";
import { pageFrame } from "../page/page-frame.ts";
import { usualPaper } from "../page/paper.ts";
import { type PdfFonts, pdfWriter } from "../page/pdf-writer.ts";
import type { Page } from "../page/scene.ts";
import { type TableColumn, tableItems } from "../page/table-flow.ts";
import { sowingWords as words } from "./page-words.ts";

const COLUMNS: readonly TableColumn[] = [
  { title: words.done, share: 7, isTick: true },
  { title: words.date, share: 20 },
  { title: words.plot, share: 11, isBold: true },
  { title: words.variety, share: 28 },
  { title: words.lot, share: 18 },
  { title: words.keptAt, share: 20 },
  { title: words.seeds, share: 9, align: "right" },
  { title: words.grams, share: 9, align: "right" },
  { title: words.plants, share: 9, align: "right" },
  { title: words.lookOut, share: 31 },
];
/** Room for a note in pencil. */
const LEAST_ROW_MM = 8;

export function sowingPages(input: CheckedLayout, setting: ListPageSetting): readonly Page[] {
  const varieties = varietyIndex(input.plan.varieties);
  const rows = sowingRows(input.plan, input.layout, input.book).flatMap((row) =>
    rowTexts(row, input.plan, varieties),
  );
  const body = (text: string, width: number) => paragraph(text, width, TYPE_PT.body, setting.ruler);
  const style = { sizePt: TYPE_PT.body, leastRowMm: LEAST_ROW_MM };
  return flowPages(
    words.title,
    (width) => [
      ...(rows.length === 0
        ? [body(words.nothing, width)]
        : tableItems(COLUMNS, rows, width, style, setting.ruler)),
      space(4),
      body(words.caution, width),
    ],
    setting,
    1,
  );
}

function rowTexts(
  row: SowingRow,
  plan: Plan,
  varieties: ReadonlyMap<string, Variety>,
): readonly (readonly string[])[] {
  const { planting, variety, kind, parts, isNamed } = row;
  const when = sowingDayWords(row);
  const what = `${variety.name}, ${kind.name}`;
  const plants = planting.plants === undefined ? "?" : String(planting.plants);
  const short = row.missingPlants > 0 ? words.short(row.missingPlants, row.missingSeeds) : "";
  if (parts.length === 0) {
    const seeds = row.seeds === null ? "" : String(row.seeds);
    const said = row.seeds === null ? words.plantsNotGiven : short || words.noLot;
    return [["", when, planting.code, what, "", "", seeds, "", plants, said]];
  }
  return parts.map(({ lot, seeds, grams }, index) => {
    const treated = lot.treated === true || lot.treatedWith !== undefined;
    const other = varieties.get(lot.variety);
    const said = [
      other && !isSameVariety(other, variety) ? words.otherVariety(other.name.toUpperCase()) : "",
      treated ? treatmentWords(lot).toUpperCase() : "",
      isNamed ? "" : words.proposed,
      index === 0 ? short : "",
    ];
    return [
      "",
      index === 0 ? when : "",
      index === 0 ? planting.code : "",
      index === 0 ? what : words.andFrom,
      lot.code,
      shelfPlace(lot, plan.storagePlaces)?.name ?? "",
      String(seeds),
      grams === null ? "" : gramsText(grams),
      index === 0 ? plants : "",
      said.filter((each) => each !== "").join("; "),
    ];
  });
}

/** The list alone as a PDF, on the paper of the plan's units, lying. */
export async function sowingListPdf(
  input: CheckedLayout,
  printedAt: string,
  fonts: PdfFonts,
): Promise<Uint8Array> {
  const { plan, layout } = input;
  const writer = pdfWriter(words.fileTitle(mapTitle(plan)), printedAt, fonts);
  const frame = pageFrame(usualPaper(plan.units), "landscape");
  const stamp = `${layout.name}  ·  ${words.printed(printedAt)}`;
  for (const page of sowingPages(input, { plan, frame, stamp, ruler: writer.ruler })) {
    writer.addPage(page);
  }
  return writer.finish();
}
