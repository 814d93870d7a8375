/**
 * The plot map: a plan's layout as a PDF for helpers in the field. Map sheets at a true ratio,
 * then the notes, then the plot list.
 */
import { cutNames } from "../map/beyond-map.ts";
import { companionPages } from "./companion-pages.ts";
import { farSources } from "../map/far-sources.ts";
import { numberedWords } from "../map/finding-items.ts";
import type { FlowItem } from "../page/flow.ts";
import { flowPages, noteWidth } from "../map/list-pages.ts";
import { mapGrid } from "../map/map-grid.ts";
import { mapContent } from "../map/map-items.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { type MapSet, type MapSheetPage, mapSheetPage } from "../map/map-sheets.ts";
import { type PlotMapSettings, mapTitle, stampText } from "../map/map-text.ts";
import { noteItems } from "../map/note-items.ts";
import { MAX_SHEETS, meets, planSheets } from "../map/page-plan.ts";
import { type PdfFonts, pdfWriter } from "../page/pdf-writer.ts";
import { plotPages } from "../map/plot-list.ts";
import { plotRows } from "../map/plot-rows.ts";
import type { Page, TextRuler } from "../page/scene.ts";
import { mapPageWords } from "./page-words.ts";

export interface PlotMap {
  readonly bytes: Uint8Array;
  readonly pages: number;
  /** Words that found no room on the drawing; they are listed in the notes. */
  readonly unplacedLabels: readonly string[];
  /** Names of what the edge of the map cuts. */
  readonly cut: readonly string[];
}

/** Called after each step; awaited, so that a screen can be drawn in between. */
export type Progress = (done: number, total: number) => void | Promise<void>;

/** Thrown when the signal says stop. */
export class PlotMapStopped extends Error {}

/**
 * Makes the PDF. The same input, settings and fonts give the same bytes. Throws a RangeError when
 * the ratio would take more than MAX_SHEETS sheets: ask planSheets first.
 */
export async function plotMapPdf(
  input: CheckedLayout,
  settings: PlotMapSettings,
  fonts: PdfFonts,
  onProgress: Progress = () => undefined,
  signal?: { readonly aborted: boolean },
): Promise<PlotMap> {
  const writer = pdfWriter(mapTitle(input.plan), settings.printedAt, fonts);
  const scenes = plotMapPages(input, settings, writer.ruler);
  const total = 2 * scenes.sheets + 2;
  let done = 0;
  const step = async () => {
    done += 1;
    await onProgress(Math.min(done, total), total);
    if (signal?.aborted === true) throw new PlotMapStopped(mapPageWords.stopped);
  };
  const pages: Page[] = [];
  let unplacedLabels: readonly string[] = [];
  for (const part of scenes.parts) {
    const made = part();
    pages.push(...made.pages);
    unplacedLabels = made.unplaced;
    await step();
  }
  for (const [index, page] of pages.entries()) {
    writer.addPage(page);
    if (index < scenes.sheets) await step();
  }
  const bytes = await writer.finish();
  await step();
  return { bytes, pages: pages.length, unplacedLabels, cut: scenes.cut };
}

interface Part {
  readonly pages: readonly Page[];
  readonly unplaced: readonly string[];
}

/** The pages in parts that are made one after the other, each map sheet and then the rest. */
export interface PlotMapScenes {
  readonly sheets: number;
  /** Names of surroundings, and the site's edge, that the edge of the map cuts. */
  readonly cut: readonly string[];
  readonly parts: readonly (() => Part)[];
}

export function plotMapPages(
  input: CheckedLayout,
  settings: PlotMapSettings,
  ruler: TextRuler,
): PlotMapScenes {
  const set = mapSet(input, settings, ruler);
  const made: MapSheetPage[] = [];
  return {
    sheets: set.plan.sheets.length,
    cut: set.cut,
    parts: [
      ...set.plan.sheets.map((sheet) => (): Part => {
        const page = mapSheetPage(set, sheet);
        made.push(page);
        return { pages: [page.page], unplaced: [] };
      }),
      () => wordPages(set, made),
    ],
  };
}

/**
 * The first map sheet, and the notes to go with it in columns of a width.
 * @param widthMm of a column of notes
 */
export function sheetAndNotes(
  input: CheckedLayout,
  settings: PlotMapSettings,
  ruler: TextRuler,
  widthMm: number,
): { readonly page: Page; readonly notes: readonly FlowItem[] } {
  const set = mapSet(input, settings, ruler);
  const [sheet] = set.plan.sheets;
  if (!sheet) throw new RangeError(mapPageWords.nothing);
  const made = mapSheetPage(set, sheet);
  return { page: made.page, notes: notesOf(set, [made], widthMm).notes };
}

function mapSet(input: CheckedLayout, settings: PlotMapSettings, ruler: TextRuler): MapSet {
  const { plan, layout } = input;
  const { paper, ratio, mostSheets = MAX_SHEETS } = settings;
  const content = mapContent(input, settings.companions?.includes("set-out"));
  const stakes = content.stakes.map(({ place }) => place);
  const sheetPlan = planSheets(plan, layout, settings, ratio, stakes);
  const count = sheetPlan.rows * sheetPlan.columns;
  if (count > mostSheets) {
    throw new RangeError(mapPageWords.tooManySheets(ratio, paper, count, mostSheets));
  }
  const isFar = (id: string) =>
    !content.items.some(
      (item) =>
        item.id === id && sheetPlan.sheets.some(({ window }) => meets(item.outline.bounds, window)),
    );
  const grid = mapGrid(sheetPlan.whole, ratio, plan.units);
  return {
    input,
    settings,
    plan: sheetPlan,
    content,
    grid,
    rows: plotRows(input, grid),
    numbered: numberedWords(input),
    far: farSources(input, (surrounding) => isFar(surrounding.id)),
    cut: cutNames(content.items, sheetPlan),
    ruler,
  };
}

function wordPages(set: MapSet, made: readonly MapSheetPage[]): Part {
  const { input, plan, ruler } = set;
  const { unplaced } = notesOf(set, made, noteWidth(plan.frame));
  const notes = (widthMm: number) => notesOf(set, made, widthMm).notes;
  const setting = {
    plan: input.plan,
    frame: plan.frame,
    stamp: stampText(input, set.settings),
    ruler,
    cardsPerPage: set.settings.cardsPerPage,
  };
  return {
    pages: [
      ...flowPages(mapPageWords.notes, notes, setting),
      ...plotPages(set.rows, setting),
      ...companionPages(set.settings.companions ?? [], input, setting),
    ],
    unplaced,
  };
}

function notesOf(set: MapSet, made: readonly MapSheetPage[], widthMm: number) {
  const { input, ruler } = set;
  const visible = new Set(made.flatMap(({ drawing }) => [...drawing.visible]));
  const labelled = new Set(made.flatMap(({ drawing }) => [...drawing.labelled]));
  const unplaced = [...visible]
    .filter((item) => item.label !== "" && !labelled.has(item))
    .map((item) => item.label);
  const rest = made.flatMap((page) => page.rest);
  const content = {
    numbered: set.numbered,
    far: set.far,
    rest: [...new Map(rest.map((item) => [item.name, item])).values()],
    cut: set.cut,
    unplaced,
    unshown: unshownNames(input, ruler),
  };
  return { notes: noteItems(input, content, widthMm, ruler), unplaced };
}

/** Codes and labels of what has a character in its name that the type cannot show. */
function unshownNames({ plan, layout }: CheckedLayout, ruler: TextRuler): readonly string[] {
  const varieties = new Map(plan.varieties.map((variety) => [variety.id, variety.name]));
  const isHidden = (...names: readonly string[]) => !names.every((name) => ruler.canShow(name));
  return [
    ...(isHidden(plan.title, plan.site.name, plan.season.name, layout.name)
      ? [mapPageWords.plan]
      : []),
    ...layout.beds.filter((bed) => isHidden(bed.code)).map((bed) => mapPageWords.bed(bed.code)),
    ...layout.plantings
      .filter(({ code, variety }) => isHidden(code, varieties.get(variety) ?? ""))
      .map((planting) => planting.code),
    ...plan.surroundings.filter((item) => isHidden(item.label)).map((item) => item.label),
  ];
}
