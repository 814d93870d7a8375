/**
 * How lots were isolated while they grew, from what was frozen into them at harvest: for a buyer or
 * an inspector. It is the same in any later plan, and says what nobody observed.
 */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { crossedLots } from "../generations/crossed-lots.ts";
import { lotBook } from "../lots/lot-book.ts";
import { type ListPageSetting, flowPages, roomBelowHeader } from "../map/list-pages.ts";
import { TYPE_PT } from "../map/map-style.ts";
import { mapTitle } from "../map/map-text.ts";
import { noteWords } from "../map/map-words.ts";
import type { Lot, Plan } from "../model/plan.ts";
import { type FlowItem, heading, paragraph, space } from "../page/flow.ts";
import { pageFrame } from "../page/page-frame.ts";
import { usualPaper } from "../page/paper.ts";
import { type PdfFonts, pdfWriter } from "../page/pdf-writer.ts";
import type { Page } from "../page/scene.ts";
import { type TableColumn, tableItems } from "../page/table-flow.ts";
import {
  OTHER_SOURCES,
  isolationSentences,
  isolationSourceCells,
  isolationSourceTitles,
} from "../record/isolation-record-words.ts";
import { continued, lotIsolationWords as words } from "./page-words.ts";

const HEADING_PT = 11;
const SHARES = [26, 10, 10, 34, 15, 41] as const;
const COLUMNS: readonly TableColumn[] = isolationSourceTitles.map((title, index) => ({
  title,
  share: SHARES[index] ?? 10,
}));

/** Lots that carry a record, in the order of the shelf; null ids: all of them. */
export function lotsWithIsolation(
  { lots }: Pick<Plan, "lots">,
  ids: ReadonlySet<string> | null = null,
): readonly Lot[] {
  return lots.filter((lot) => lot.isolation !== undefined && (ids === null || ids.has(lot.id)));
}

export function lotIsolationPages(
  { plan, book }: Pick<CheckedLayout, "plan" | "book">,
  lots: readonly Lot[],
  setting: ListPageSetting,
): readonly Page[] {
  const { width } = roomBelowHeader(setting.frame);
  const body = (text: string) => paragraph(text, width, TYPE_PT.body, setting.ruler);
  const items = lots.flatMap((lot) => lotItems(lot, plan, book, width, setting));
  const none = items.length === 0 ? [body(words.none)] : [body(OTHER_SOURCES)];
  return flowPages(words.title, [...items, ...none, body(noteWords.seedLaw)], setting, 1);
}

function lotItems(
  lot: Lot,
  plan: Plan,
  book: CheckedLayout["book"],
  width: number,
  { ruler }: ListPageSetting,
): readonly FlowItem[] {
  const { isolation } = lot;
  if (!isolation) return [];
  const variety = plan.varieties.find(({ id }) => id === lot.variety);
  const kind = book.kind(variety?.kind ?? "");
  const body = (text: string) => paragraph(text, width, TYPE_PT.body, ruler);
  const title = words.lot(
    lot.code,
    `${variety?.name ?? ""}${kind ? `, ${kind.name} (${kind.botanicalName})` : ""}`,
  );
  const goesOn = paragraph(continued(title), width, TYPE_PT.body, ruler, { isBold: true });
  const rows = isolation.sources.map((source) => isolationSourceCells(source, plan.units));
  const more = isolation.moreSources ?? 0;
  return [
    heading(title, width, HEADING_PT, ruler),
    { ...body(originText(lot, plan)), isKeptWithNext: true },
    body(isolationSentences(isolation, plan.units).join(" ")),
    space(1),
    ...(rows.length === 0
      ? [body(words.noSource)]
      : [
          body(words.sources),
          ...tableItems(COLUMNS, rows, width, { sizePt: TYPE_PT.small, continued: goesOn }, ruler),
        ]),
    ...(more === 0 ? [] : [body(words.more(more))]),
    space(1.5),
    ...(isolation.notObserved.length === 0
      ? [body(words.allObserved)]
      : [
          { ...body(words.notObserved), isKeptWithNext: true },
          ...isolation.notObserved.map((unseen) => body(`- ${unseen}`)),
        ]),
    space(4),
  ];
}

/** `Harvested 2027 from plot A03-1, season 2027; saved from 16 plants; sown from ST-26`. */
function originText(lot: Lot, plan: Plan): string {
  const { harvestYear, from, grownFrom } = lot;
  const crossed = crossedLots(plan.lots).get(lot.id) ?? [];
  const parents = (grownFrom ?? []).flatMap((id) => lotBook(plan.lots).lot(id)?.code ?? []);
  const harvested =
    harvestYear === undefined ? words.harvestedSometime : words.harvested(harvestYear);
  const ofPlot = from?.plot === undefined ? harvested : words.fromPlot(harvested, from.plot);
  const parts = [
    from?.season === undefined ? ofPlot : words.inSeason(ofPlot, from.season),
    from?.plants === undefined ? words.notCounted : words.savedFrom(from.plants),
    from?.cleanedGrams === undefined ? "" : words.seed(from.cleanedGrams),
    parents.length === 0 ? "" : words.sownFrom(parents.join(", ")),
    crossed.length === 0 ? "" : words.crossed(crossed.join(", ")),
    plan.site.name === "" ? "" : words.grownAt(plan.site.name),
  ];
  return `${parts.filter((part) => part !== "").join("; ")}.`;
}

/** The pages as a PDF. @param ids lots wanted; null: all that carry a record */
export async function lotIsolationPdf(
  input: Pick<CheckedLayout, "plan" | "book">,
  ids: ReadonlySet<string> | null,
  printedAt: string,
  fonts: PdfFonts,
): Promise<Uint8Array> {
  const { plan } = input;
  const writer = pdfWriter(mapTitle(plan), printedAt, fonts);
  const frame = pageFrame(usualPaper(plan.units), "landscape");
  const stamp = [plan.title, words.printed(printedAt)].join("  ·  ");
  const setting = { plan, frame, stamp, ruler: writer.ruler };
  for (const page of lotIsolationPages(input, lotsWithIsolation(plan, ids), setting)) {
    writer.addPage(page);
  }
  return writer.finish();
}
