/** Pages of words after the map: the notes in columns, and the lists. */
import { type FlowItem, type Flowed, flowInto } from "../page/flow.ts";
import { mapTitle } from "./map-text.ts";
import type { PageFrame } from "../page/page-frame.ts";
import { PAGE_MARGIN_MM } from "../page/page-frame.ts";
import type { PaperSize } from "../page/paper.ts";
import { scaledMarks } from "../page/scaled-marks.ts";
import type { Plan } from "../model/plan.ts";
import type { Box, Mark, Page, TextRuler } from "../page/scene.ts";
import { headerMarks } from "./sheet-edges.ts";
import { headerWords } from "./map-words.ts";

const HEADER_MM = 19;
const COLUMN_GAP_MM = 8;
/** Lines longer than this are hard to read: the notes go into two columns. */
const ONE_COLUMN_MM = 200;

export interface ListPageSetting {
  readonly plan: Plan;
  readonly frame: PageFrame;
  readonly stamp: string;
  readonly ruler: TextRuler;
  /** Bed cards on a page; absent: four. */
  readonly cardsPerPage?: 2 | 4 | undefined;
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

/** What is set on pages: items of a width, or made for one. */
export type PageItems = readonly FlowItem[] | ((widthMm: number) => readonly FlowItem[]);

/** Rather than open a page for little, all is set a little smaller. */
const SHARES = [1, 0.97, 0.94, 0.91, 0.88] as const;
/** A last page filled less than this is evened out with the pages before it. */
const LEAST_FILLED = 0.25;
const EVEN_STEPS = 12;

/**
 * Pages in as many columns as the notes, or in one. Items made for a width are set up to an eighth
 * smaller where that saves a page; a last page with little on it takes some from those before.
 */
export function flowPages(
  name: string,
  items: PageItems,
  setting: ListPageSetting,
  mostColumns = 2,
): readonly Page[] {
  const columns =
    mostColumns === 1 ? [roomBelowHeader(setting.frame)] : noteColumns(setting.frame.size);
  const sets = (typeof items === "function" ? SHARES : [1]).map((share) =>
    flowed(items, columns, share),
  );
  const fewest = Math.min(...sets.map(({ bodies }) => bodies.length));
  const best = sets.find(({ bodies }) => bodies.length === fewest) as Bodies;
  const [column] = columns;
  const isShort = fewest > 1 && best.filledMm < (column?.height ?? 0) * LEAST_FILLED;
  return titledPages(name, (isShort ? evened(items, columns, best) : best).bodies, setting);
}

interface Bodies {
  readonly bodies: readonly (readonly Mark[])[];
  readonly share: number;
  /** How far down the last page is filled, mm. */
  readonly filledMm: number;
}

/** Set in columns that are larger by what the marks are then made smaller. */
function flowed(
  items: PageItems,
  columns: readonly Box[],
  share: number,
  heightMm = columns[0]?.height ?? 0,
): Bodies {
  const rooms = columns.map(({ left, top, width }) => {
    const first = columns[0] as Box;
    return {
      left: first.left + (left - first.left) / share,
      top,
      width: width / share,
      height: heightMm / share,
    };
  });
  const about = { x: columns[0]?.left ?? 0, y: columns[0]?.top ?? 0 };
  const bodies: (readonly Mark[])[] = [];
  let filledMm = 0;
  let waiting = typeof items === "function" ? items(rooms[0]?.width ?? 0) : items;
  while (waiting.length > 0) {
    const made = evenColumns(waiting, rooms);
    bodies.push(scaledMarks(made.marks, about, share));
    filledMm = made.filledMm * share;
    waiting = made.rest;
  }
  return { bodies, share, filledMm };
}

/** Filled in turn; where all goes in, with columns about equally high. */
function evenColumns(items: readonly FlowItem[], rooms: readonly Box[]): Flowed {
  let best = flowInto(items, rooms);
  if (best.rest.length > 0 || rooms.length === 1) return best;
  let [low, high] = [0, best.filledMm];
  for (let step = 0; step < EVEN_STEPS; step += 1) {
    const height = (low + high) / 2;
    const tried = flowInto(
      items,
      rooms.map((room) => ({ ...room, height })),
    );
    if (tried.rest.length === 0 && tried.filledMm <= best.filledMm) {
      best = tried;
      high = height;
    } else low = height;
  }
  return best;
}

/** The same number of pages, the lowest columns with which it comes out. */
function evened(items: PageItems, columns: readonly Box[], full: Bodies): Bodies {
  const most = columns[0]?.height ?? 0;
  let best = full;
  let [low, high] = [most / 2, most];
  for (let step = 0; step < EVEN_STEPS; step += 1) {
    const height = (low + high) / 2;
    const tried = flowed(items, columns, full.share, height);
    if (tried.bodies.length === full.bodies.length) {
      best = tried;
      high = height;
    } else low = height;
  }
  return best;
}

/** Bodies as pages with the map's header; several are counted. */
export function titledPages(
  name: string,
  bodies: readonly (readonly Mark[])[],
  { plan, frame, stamp, ruler }: ListPageSetting,
): readonly Page[] {
  const header = { ...frame.header, width: frame.size.widthMm - 2 * PAGE_MARGIN_MM };
  return bodies.map((body, index) => {
    const place = bodies.length > 1 ? headerWords.page(name, index + 1, bodies.length) : name;
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
