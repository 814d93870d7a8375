/** Makes what the list of printing names: pages first, which are shown as they are or become PDFs. */
import { type CheckedLayout, checkLayouts } from "../checks/checked-layout.ts";
import { comparePages } from "../compare/compare-pages.ts";
import type { LabelChoice } from "../labels/label-pages.ts";
import { labelDocument } from "../labels/labels-pdf.ts";
import { cutWords } from "../map/beyond-map.ts";
import type { CompanionId } from "../map/companion-ids.ts";
import { type PlotMapSettings, mapTitle, stampText } from "../map/map-text.ts";
import { isPictureWanted, printedPicture } from "../map/picture-mark.ts";
import { unsetNames, unsetWords } from "../map/unset-names.ts";
import { pageFrame } from "../page/page-frame.ts";
import { type PdfFonts, pdfWriter } from "../page/pdf-writer.ts";
import type { Page, TextRuler } from "../page/scene.ts";
import { companionPages } from "../paper-set/companion-pages.ts";
import type { ListPageSetting } from "../map/list-pages.ts";
import { lotIsolationPages, lotsWithIsolation } from "../paper-set/lot-isolation-pages.ts";
import { neighbourNotePages } from "../paper-set/neighbour-notes.ts";
import { plotMapPages } from "../paper-set/plot-map.ts";
import { sowingPages } from "../paper-set/sowing-pages.ts";
import { printedDay, yearsPages } from "../paper-set/years-pages.ts";
import { type PrintId, type PrintPart, printParts } from "./print-list.ts";
import { sheetWords } from "../map/map-words.ts";
import { remarkWords } from "./print-words.ts";

export interface PrintSettings extends Omit<PlotMapSettings, "companions"> {
  readonly stakes: LabelChoice;
  readonly packets: LabelChoice;
}

export interface PrintedPart {
  readonly id: PrintId;
  readonly pages: readonly Page[];
  /** What to look at before it is used. */
  readonly remarks: readonly string[];
}

/** Called between pieces of work: others may have their turn, and a stop be heard. */
export type PrintStep = () => Promise<void>;

/** The pages of one part. */
export async function printedPart(
  id: PrintId,
  input: CheckedLayout,
  settings: PrintSettings,
  ruler: TextRuler,
  step: PrintStep = () => Promise.resolve(),
): Promise<PrintedPart> {
  await step();
  const { labels } = partOf(id);
  if (labels) {
    const choice = labels === "stakes" ? settings.stakes : settings.packets;
    return { id, ...labelDocument(input, labels, choice, ruler) };
  }
  if (id === "map") return mapPart(input, settings, ruler, step);
  if (id === "layouts") return layoutsPart(input, settings, ruler, step);
  const frame = pageFrame(settings.paper, settings.orientation);
  const setting = {
    plan: input.plan,
    frame,
    stamp: stampText(input, settings),
    ruler,
    cardsPerPage: settings.cardsPerPage,
  };
  const today = printedDay(settings.printedAt, input.plan.season.first);
  const pages = id === "years" ? yearsPages(input, today, setting) : listPages(id, input, setting);
  return { id, pages, remarks: [] };
}

function listPages(id: PrintId, input: CheckedLayout, setting: ListPageSetting): readonly Page[] {
  if (id === "sowing-list") return sowingPages(input, setting);
  if (id === "lot-isolation")
    return lotIsolationPages(input, lotsWithIsolation(input.plan), setting);
  if (id === "neighbours") return neighbourNotePages(input, setting);
  return companionPages([id as CompanionId], input, setting);
}

function partOf(id: PrintId): PrintPart {
  const part = printParts.find((each) => each.id === id);
  if (!part) throw new Error(`There is nothing called "${id}" to print.`);
  return part;
}

async function mapPart(
  input: CheckedLayout,
  settings: PrintSettings,
  ruler: TextRuler,
  step: PrintStep,
): Promise<PrintedPart> {
  const { parts, cut } = plotMapPages(input, settings, ruler);
  const pages: Page[] = [];
  const unplaced: string[] = [];
  for (const part of parts) {
    const made = part();
    pages.push(...made.pages);
    unplaced.push(...made.unplaced);
    await step();
  }
  const remarks = [
    ...(cut.length > 0 ? [cutWords(cut)] : []),
    ...(unplaced.length > 0 ? [remarkWords.noRoom(unplaced.join(", "))] : []),
  ];
  return { id: "map", pages, remarks };
}

/** All layouts as planned, the one that is printed held against each of the others. */
async function layoutsPart(
  { plan, layout }: CheckedLayout,
  { paper, printedAt }: PrintSettings,
  ruler: TextRuler,
  step: PrintStep,
): Promise<PrintedPart> {
  const others = plan.layouts.filter(({ id }) => id !== layout.id);
  const compared = checkLayouts(plan, [layout, ...others]);
  await step();
  const { parts } = comparePages(compared, { paper, isOverlaid: false, printedAt }, ruler);
  const pages: Page[] = [];
  for (const part of parts) {
    pages.push(...part());
    await step();
  }
  return { id: "layouts", pages, remarks: [] };
}

/** What is to be looked at whichever parts are printed. */
export function planRemarks(input: CheckedLayout, ruler: TextRuler): readonly string[] {
  const { plan, layout, result } = input;
  const conflicts = result.findings.filter(({ severity }) => severity === "conflict").length;
  return [
    unsetWords(unsetNames(input, ruler)),
    isPictureWanted(plan.picture) && !printedPicture(plan.picture) ? sheetWords.pictureLeft : "",
    plan.site.name === "" ? remarkWords.noSite : "",
    plan.season.name === "" ? remarkWords.noSeason : "",
    layout.plantings.length === 0 ? remarkWords.noPlanting : "",
    conflicts === 0 ? "" : remarkWords.openConflicts(conflicts),
  ].filter((words) => words !== "");
}

/** Pages as one PDF. @param title what is in it, after the name of the plan */
export async function printedPdf(
  { plan }: CheckedLayout,
  { title, pages }: { readonly title: string; readonly pages: readonly Page[] },
  printedAt: string,
  fonts: PdfFonts,
  step: PrintStep = () => Promise.resolve(),
): Promise<Uint8Array> {
  const writer = pdfWriter(remarkWords.fileTitle(mapTitle(plan), title), printedAt, fonts);
  for (const page of pages) {
    writer.addPage(page);
    await step();
  }
  return writer.finish();
}
