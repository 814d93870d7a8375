/** Pages of words after the map: the notes in columns, and the plot list. */
import { type FlowItem, flowInto } from "../page/flow.ts";
import { mapTitle } from "./map-text.ts";
import type { PageFrame } from "../page/page-frame.ts";
import { PAGE_MARGIN_MM } from "../page/page-frame.ts";
import type { PaperSize } from "../page/paper.ts";
import { plotListPages } from "./plot-list.ts";
import type { PlotRow } from "./plot-rows.ts";
import type { Plan } from "../model/plan.ts";
import type { Box, Mark, Page, TextRuler } from "../page/scene.ts";
import { headerMarks } from "./sheet-edges.ts";

const HEADER_MM = 19;
const COLUMN_GAP_MM = 8;
/** Lines longer than this are hard to read: the notes go into two columns. */
const ONE_COLUMN_MM = 200;

export interface ListPageSetting {
  readonly plan: Plan;
  readonly frame: PageFrame;
  readonly stamp: string;
  readonly ruler: TextRuler;
}

/** Width of one column of notes, mm. */
export function noteWidth(frame: PageFrame): number {
  return noteColumns(frame.size)[0]?.width ?? 0;
}

/** Columns of notes on a page below its header. */
export function noteColumns(size: PaperSize): readonly Box[] {
  const box = roomBelowHeader({ size });
  const count = box.width > ONE_COLUMN_MM ? 2 : 1;
  const width = (box.width - COLUMN_GAP_MM * (count - 1)) / count;
  return Array.from({ length: count }, (_, index) => ({
    ...box,
    left: box.left + index * (width + COLUMN_GAP_MM),
    width,
  }));
}

/** The page without header and margins. */
export function roomBelowHeader({ size }: Pick<PageFrame, "size">): Box {
  return {
    left: PAGE_MARGIN_MM,
    top: PAGE_MARGIN_MM + HEADER_MM,
    width: size.widthMm - 2 * PAGE_MARGIN_MM,
    height: size.heightMm - 2 * PAGE_MARGIN_MM - HEADER_MM,
  };
}

/** Pages in as many columns as the notes, or in one. */
export function flowPages(
  name: string,
  items: readonly FlowItem[],
  setting: ListPageSetting,
  mostColumns = 2,
): readonly Page[] {
  const columns =
    mostColumns === 1 ? [roomBelowHeader(setting.frame)] : noteColumns(setting.frame.size);
  const bodies: (readonly Mark[])[] = [];
  let waiting = items;
  while (waiting.length > 0) {
    const { marks, rest } = flowInto(waiting, columns);
    bodies.push(marks);
    waiting = rest;
  }
  return titledPages(name, bodies, setting);
}

export function plotPages(rows: readonly PlotRow[], setting: ListPageSetting): readonly Page[] {
  const bodies = plotListPages(rows, roomBelowHeader(setting.frame), setting.ruler);
  return titledPages("Plot list", bodies, setting);
}

/** Bodies as pages with the map's header; several are counted. */
export function titledPages(
  name: string,
  bodies: readonly (readonly Mark[])[],
  { plan, frame, stamp, ruler }: ListPageSetting,
): readonly Page[] {
  const header = { ...frame.header, width: frame.size.widthMm - 2 * PAGE_MARGIN_MM };
  return bodies.map((body, index) => {
    const place = bodies.length > 1 ? `${name}, page ${index + 1} of ${bodies.length}` : name;
    return {
      ...frame.size,
      name: place,
      marks: [
        ...headerMarks(header, mapTitle(plan), [stamp, place], null, ruler).map((mark) =>
          mark.kind === "text" && mark.text === place
            ? { ...mark, part: { role: "heading" as const, level: 2 as const, once: name } }
            : mark,
        ),
        ...body,
      ],
    };
  });
}
