/** The years for the wall: varieties by crossing set, seasons across, on one page where it can be read. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { type ListPageSetting, roomBelowHeader, titledPages } from "../map/list-pages.ts";
import { mapTitle } from "../map/map-text.ts";
import { dayFromIso } from "../model/day.ts";
import { type FlowItem, flowInto, heading, paragraph, space } from "../page/flow.ts";
import { pageFrame } from "../page/page-frame.ts";
import { usualPaper } from "../page/paper.ts";
import { type PdfFonts, pdfWriter } from "../page/pdf-writer.ts";
import { scaledMarks } from "../page/scaled-marks.ts";
import type { Box, Mark, Page } from "../page/scene.ts";
import { type TableCell, type TableColumn, tableItems, tableRows } from "../page/table-flow.ts";
import { yearsOfPlan } from "../renewal/years-of-plan.ts";
import { seasonNames } from "../renewal/years-settings.ts";
import { type YearsPart, yearsTable } from "../renewal/years-table.ts";
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
/**
 * Sizes of type tried until all is on one page, the last two with all else a little smaller too;
 * the last comes to 6 points, the least that is read at arm's length.
 */
const SIZES: readonly (readonly [sizePt: number, share: number])[] = [
  [9, 1],
  [8, 1],
  [7.5, 1],
  [7, 1],
  [7, 0.93],
  [6.5, 0.93],
];

/** @param day of the printing: what is known of the lots then */
export function yearsPages(
  { plan, layout, book }: CheckedLayout,
  day: number,
  setting: ListPageSetting,
): readonly Page[] {
  const years = yearsOfPlan(plan, layout, book, day);
  const seasons = seasonNames(plan, years.problem.seasons);
  const names: YearsNames = { years, seasons, units: plan.units };
  const table = yearsTable(plan, book, years);
  const room = roomBelowHeader(setting.frame);
  let bodies: (readonly Mark[])[] = [];
  for (const [sizePt, share] of SIZES) {
    const rooms = columnsOf({ ...room, width: room.width / share, height: room.height / share });
    const widthMm = rooms[0]?.width ?? 0;
    const marks = filled(yearsItems({ table, names, widthMm, sizePt, setting }), rooms);
    bodies = marks.map((each) => scaledMarks(each, { x: room.left, y: room.top }, share));
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

/** Of a caution about more, the wall has the number: the marks in the table say who. */
const MOST_NAMES = 4;

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
    { title: paperWords.variety, share: 42, isBold: true },
    ...names.seasons.map((title) => ({ title, share: 58 / names.seasons.length })),
  ];
  const lines = parts.flatMap(cellsOf);
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
    ...judged.faults.map((fault) => say(`× ${faultWords(fault, names)}`)),
    ...cautionsOf(judged, names).map((caution) => say(`! ${cautionWords(caution, MOST_NAMES)}`)),
    ...names.years.not.map(({ variety, why }) =>
      say(`${variety.name} ${paperWords.notLaid}: ${notWords(why)}.`),
    ),
    say(limitWords(names)),
  ];
}

/** A set of one kind is headed by it; in others each variety names its own. */
function cellsOf({ lines }: YearsPart): readonly (readonly TableCell[])[] {
  const isOneKind = new Set(lines.map(({ row }) => row.kind)).size === 1;
  return lines.map(({ row, cells }) => {
    const kind = isOneKind ? "" : `, ${row.kind.name}`;
    const mark = row.standing === "keeps" ? "" : row.standing === "late" ? " !" : " ?";
    return [`${row.variety.name}${kind} ${row.lot?.code ?? ""}${mark}`, ...cells.map(paperCell)];
  });
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
