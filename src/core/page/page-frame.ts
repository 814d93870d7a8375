/** Where things stand on a map sheet: title, drawing, key, bars. Millimetres. */
import { type Orientation, type PaperName, type PaperSize, paperSize } from "./paper.ts";
import type { Box } from "./scene.ts";

/** Kept free all round: room to laminate, and more than printers cannot reach. */
export const PAGE_MARGIN_MM = 10;
/** Letters and numbers of the grid stand in a strip this wide on each side of the drawing. */
export const GRID_STRIP_MM = 5;
const HEADER_MM = 19;
const GAP_MM = 2;
const SIDE_BAR_MM = 9;
/** Below this width the scale bar and the check bars stand one above the other. */
const FOOT_IN_ONE_ROW_MM = 185;
const FOOT_MM = { inOneRow: 12, inTwo: 24 } as const;

export interface PageFrame {
  readonly size: PaperSize;
  /** Title and north arrow. */
  readonly header: Box;
  /** The window the ground is seen through. */
  readonly drawing: Box;
  /** Key, findings, far pollen sources; filled column by column. */
  readonly panel: readonly Box[];
  /** The upright check bars. */
  readonly sideBar: Box;
  /** Scale bar, and the level check bars. */
  readonly foot: Box;
  readonly isFootInOneRow: boolean;
}

export function pageFrame(paper: PaperName, orientation: Orientation): PageFrame {
  const size = paperSize(paper, orientation);
  const room: Box = {
    left: PAGE_MARGIN_MM,
    top: PAGE_MARGIN_MM,
    width: size.widthMm - 2 * PAGE_MARGIN_MM,
    height: size.heightMm - 2 * PAGE_MARGIN_MM,
  };
  return { size, ...(orientation === "landscape" ? besideDrawing(room) : belowDrawing(room)) };
}

type Parts = Omit<PageFrame, "size">;

/** The panel has the whole height of the page where the bars go in one row under the drawing. */
function besideDrawing({ left, top, width, height }: Box): Parts {
  const panelWidth = clamp((width + 2 * PAGE_MARGIN_MM) * 0.22, 48, 84);
  const panelLeft = left + width - panelWidth;
  const drawingWidth = width - panelWidth - 3;
  const isFull = drawingWidth >= FOOT_IN_ONE_ROW_MM;
  const isFootInOneRow = isFull || width >= FOOT_IN_ONE_ROW_MM;
  const footHeight = isFootInOneRow ? FOOT_MM.inOneRow : FOOT_MM.inTwo;
  const foot: Box = {
    left,
    top: top + height - footHeight,
    width: isFull ? drawingWidth : width,
    height: footHeight,
  };
  const middle = { top: top + HEADER_MM, height: height - HEADER_MM - footHeight - GAP_MM };
  return {
    header: {
      left,
      top,
      width: isFull ? drawingWidth : width - SIDE_BAR_MM - GAP_MM,
      height: HEADER_MM,
    },
    foot,
    isFootInOneRow,
    drawing: inset({ left, width: drawingWidth, ...middle }),
    panel: [
      {
        left: panelLeft,
        width: panelWidth - SIDE_BAR_MM - GAP_MM,
        ...(isFull ? { top, height } : middle),
      },
    ],
    sideBar: sideBar(left + width, isFull ? top + height : middle.top + middle.height),
  };
}

function belowDrawing({ left, top, width, height }: Box): Parts {
  const isFootInOneRow = width >= FOOT_IN_ONE_ROW_MM;
  const footHeight = isFootInOneRow ? FOOT_MM.inOneRow : FOOT_MM.inTwo;
  const foot: Box = { left, top: top + height - footHeight, width, height: footHeight };
  const middleTop = top + HEADER_MM;
  const panelHeight = clamp((height + 2 * PAGE_MARGIN_MM) * 0.23, 44, 84);
  const upper = foot.top - GAP_MM - middleTop - panelHeight - GAP_MM;
  const columns = isFootInOneRow ? 3 : 2;
  const columnWidth = (width - 5 * (columns - 1)) / columns;
  return {
    // The upright check bars stand beside header and drawing: even A5 has 4 in of height there.
    header: { left, top, width: width - SIDE_BAR_MM - GAP_MM, height: HEADER_MM },
    foot,
    isFootInOneRow,
    drawing: inset({
      left,
      top: middleTop,
      width: width - SIDE_BAR_MM - GAP_MM,
      height: upper,
    }),
    panel: Array.from({ length: columns }, (_, index) => ({
      left: left + index * (columnWidth + 5),
      top: middleTop + upper + GAP_MM,
      width: columnWidth,
      height: panelHeight,
    })),
    sideBar: sideBar(left + width, middleTop + upper),
  };
}

function sideBar(right: number, bottom: number): Box {
  return {
    left: right - SIDE_BAR_MM,
    top: PAGE_MARGIN_MM,
    width: SIDE_BAR_MM,
    height: bottom - PAGE_MARGIN_MM,
  };
}

function inset({ left, top, width, height }: Box): Box {
  return {
    left: left + GRID_STRIP_MM,
    top: top + GRID_STRIP_MM,
    width: width - 2 * GRID_STRIP_MM,
    height: height - 2 * GRID_STRIP_MM,
  };
}

function clamp(value: number, least: number, most: number): number {
  return Math.min(Math.max(value, least), most);
}
