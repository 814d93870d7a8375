/** The sowing list: in order of sowing, which lot from which place, how much, where, a box to tick. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { shelfPlace } from "../lots/estimate.ts";
import { gramsText, treatmentWords } from "../lots/lot-words.ts";
import { type SowingRow, sowingDayWords, sowingRows } from "../lots/sowing.ts";
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

const COLUMNS: readonly TableColumn[] = [
  { title: "Done", share: 7, isTick: true },
  { title: "Date", share: 20 },
  { title: "Plot", share: 11, isBold: true },
  { title: "Variety, kind", share: 28 },
  { title: "Lot", share: 18 },
  { title: "Kept at", share: 20 },
  { title: "Seeds", share: 9, align: "right" },
  { title: "Grams", share: 9, align: "right" },
  { title: "Plants", share: 9, align: "right" },
  { title: "Look out", share: 31 },
];
/** Room for a note in pencil. */
const LEAST_ROW_MM = 8;

const CAUTION =
  'Days under glass with an "about" are counted back from setting out by the weeks of the kind; your own days go before them. Seeds are reckoned with each lot\'s tested or estimated germination, what comes up, and the spare; where no emergence is given, rules of thumb stand in. Treated seed: gloves, no children, never for food or feed; what its label and local rules say goes before this list.';

export function sowingPages(input: CheckedLayout, setting: ListPageSetting): readonly Page[] {
  const varieties = varietyIndex(input.plan.varieties);
  const rows = sowingRows(input.plan, input.layout, input.book).flatMap((row) =>
    rowTexts(row, input.plan, varieties),
  );
  const body = (words: string, width: number) =>
    paragraph(words, width, TYPE_PT.body, setting.ruler);
  const style = { sizePt: TYPE_PT.body, leastRowMm: LEAST_ROW_MM };
  return flowPages(
    "Sowing list",
    (width) => [
      ...(rows.length === 0
        ? [body("Nothing is sown in this layout.", width)]
        : tableItems(COLUMNS, rows, width, style, setting.ruler)),
      space(4),
      body(CAUTION, width),
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
  const short =
    row.missingPlants > 0
      ? `no seed for ${row.missingPlants} plants (${row.missingSeeds} seeds)`
      : "";
  if (parts.length === 0) {
    const seeds = row.seeds === null ? "" : String(row.seeds);
    const words = row.seeds === null ? "number of plants not given" : short || "no lot named";
    return [["", when, planting.code, what, "", "", seeds, "", plants, words]];
  }
  return parts.map(({ lot, seeds, grams }, index) => {
    const treated = lot.treated === true || lot.treatedWith !== undefined;
    const other = varieties.get(lot.variety);
    const words = [
      other && !isSameVariety(other, variety) ? `LOT OF ${other.name.toUpperCase()}` : "",
      treated ? treatmentWords(lot).toUpperCase() : "",
      isNamed ? "" : "lot proposed",
      index === 0 ? short : "",
    ];
    return [
      "",
      index === 0 ? when : "",
      index === 0 ? planting.code : "",
      index === 0 ? what : "and from",
      lot.code,
      shelfPlace(lot, plan.storagePlaces)?.name ?? "",
      String(seeds),
      grams === null ? "" : gramsText(grams),
      index === 0 ? plants : "",
      words.filter((each) => each !== "").join("; "),
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
  const writer = pdfWriter(`${mapTitle(plan)}: sowing list`, printedAt, fonts);
  const frame = pageFrame(usualPaper(plan.units), "landscape");
  const stamp = `${layout.name}  ·  printed ${printedAt}`;
  for (const page of sowingPages(input, { plan, frame, stamp, ruler: writer.ruler })) {
    writer.addPage(page);
  }
  return writer.finish();
}
