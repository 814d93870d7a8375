/** The years for the wall: varieties by crossing set, seasons across, on one page where it can be read. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { type ListPageSetting, roomBelowHeader, titledPages } from "../map/list-pages.ts";
import { mapTitle } from "../map/map-text.ts";
import { dayFromIso } from "../model/day.ts";
import { type FlowItem, flowInto, heading, paragraph, space } from "../page/flow.ts";
import { pageFrame } from "../page/page-frame.ts";
import { usualPaper } from "../page/paper.ts";
import { type PdfFonts, pdfWriter } from "../page/pdf-writer.ts";
import type { Box, Mark, Page } from "../page/scene.ts";
import { type TableCell, type TableColumn, tableItems, tableRows } from "../page/table-flow.ts";
import { yearsOfPlan } from "../renewal/years-of-plan.ts";
import { seasonNames } from "../renewal/years-settings.ts";
import { type YearsLine, yearsTable } from "../renewal/years-table.ts";
import { type YearsNames, faultWords } from "../renewal/fault-words.ts";
import {
  cautionWords,
  cautionsOf,
  limitWords,
  notWords,
  paperCell,
  paperWords,
  verdictWords,
} from "../renewal/years-words.ts";

/** A column of varieties and seasons is no narrower, mm. */
const LEAST_COLUMN_MM = 84;
const GAP_MM = 6;
/** Sizes tried until all is on one page; the last is the least that is read at arm's length. */
const SIZES_PT = [9, 8, 7.5, 7, 6.5] as const;

/** @param day of the printing: what is known of the lots then */
export function yearsPages(
  { plan, layout, book }: CheckedLayout,
  day: number,
  setting: ListPageSetting,
): readonly Page[] {
  const years = yearsOfPlan(plan, layout, book, day);
  const seasons = seasonNames(plan, years.problem.seasons);
  const names: YearsNames = { years, seasons, units: plan.units };
  const rooms = columnsOf(roomBelowHeader(setting.frame));
  const widthMm = rooms[0]?.width ?? 0;
  let bodies: (readonly Mark[])[] = [];
  for (const sizePt of SIZES_PT) {
    const table = yearsTable(plan, book, years);
    bodies = filled(yearsItems({ table, names, widthMm, sizePt, setting }), rooms);
    if (bodies.length === 1) break;
  }
  return titledPages(paperWords.title, bodies, setting);
}

function columnsOf(room: Box): readonly Box[] {
  const count = Math.max(1, Math.floor((room.width + GAP_MM) / (LEAST_COLUMN_MM + GAP_MM)));
  const width = (room.width - GAP_MM * (count - 1)) / count;
  return Array.from({ length: count }, (_, at) => ({
    ...room,
    left: room.left + at * (width + GAP_MM),
    width,
  }));
}

function filled(items: readonly FlowItem[], rooms: readonly Box[]): (readonly Mark[])[] {
  const bodies: (readonly Mark[])[] = [];
  let waiting = items;
  while (waiting.length > 0) {
    const made = flowInto(waiting, rooms);
    bodies.push(made.marks);
    waiting = made.rest;
  }
  return bodies;
}

interface Sheet {
  readonly table: ReturnType<typeof yearsTable>;
  readonly names: YearsNames;
  readonly widthMm: number;
  readonly sizePt: number;
  readonly setting: ListPageSetting;
}

function yearsItems({ table, names, widthMm, sizePt, setting }: Sheet): readonly FlowItem[] {
  const { ruler } = setting;
  const { judged, parts } = table;
  const columns: readonly TableColumn[] = [
    { title: paperWords.variety, share: 38, isBold: true },
    ...names.seasons.map((title) => ({ title, share: 52 / names.seasons.length })),
  ];
  const lines = parts.flatMap((part) => part.lines.map((line) => cellsOf(line)));
  const totals: readonly TableCell[] = [
    paperWords.counts,
    ...judged.seasons.map(({ grown }) => String(grown.length)),
  ];
  const style = { sizePt };
  const [head] = tableItems(columns, [...lines, totals], widthMm, style, ruler);
  const again = head ? { again: head } : {};
  const rows = tableRows(columns, [...lines, totals], widthMm, style, ruler);
  let at = 0;
  const body = parts.flatMap(({ name, lines: own }) => {
    const named = { ...heading(name, widthMm, sizePt, ruler), ...again };
    const items = rows.slice(at, at + own.length).map((row) => ({ ...row, ...again }));
    at += own.length;
    return [named, ...items];
  });
  const say = (words: string) => paragraph(words, widthMm, sizePt, ruler);
  return [
    ...(head ? [head] : []),
    ...body,
    ...rows.slice(at),
    space(2),
    say(paperWords.legend),
    say(verdictWords(judged, names)),
    ...judged.faults.map((fault) => say(`✕ ${faultWords(fault, names)}`)),
    ...cautionsOf(judged, names).map((caution) => say(`! ${cautionWords(caution)}`)),
    ...names.years.not.map(({ variety, why }) =>
      say(`${variety.name} ${paperWords.notLaid}: ${notWords(why)}.`),
    ),
    say(limitWords(names)),
  ];
}

function cellsOf({ row, cells }: YearsLine): readonly TableCell[] {
  const lot = row.lot ? ` ${row.lot.code}` : "";
  return [[row.variety.name, `${row.kind.name}${lot}`], ...cells.map(paperCell)];
}

/** The years alone as a PDF, on the paper of the plan's units, upright. */
export async function yearsPdf(
  input: CheckedLayout,
  printedAt: string,
  fonts: PdfFonts,
): Promise<Uint8Array> {
  const { plan, layout } = input;
  const writer = pdfWriter(`${mapTitle(plan)}: ${paperWords.title}`, printedAt, fonts);
  const frame = pageFrame(usualPaper(plan.units), "portrait");
  const stamp = `${layout.name}  ·  ${paperWords.printed(printedAt)}`;
  const setting = { plan, frame, stamp, ruler: writer.ruler };
  for (const page of yearsPages(input, printedDay(printedAt, plan.season.first), setting)) {
    writer.addPage(page);
  }
  return writer.finish();
}

/** The day of `2027-02-14 10:02`. */
export function printedDay(printedAt: string, otherwise: number): number {
  return dayFromIso(printedAt.slice(0, 10)) ?? otherwise;
}
