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
  const left = PAGE_MARGIN_MM;
  const width = size.widthMm - 2 * PAGE_MARGIN_MM;
  const isFootInOneRow = width >= FOOT_IN_ONE_ROW_MM;
  const footHeight = isFootInOneRow ? 12 : 24;
  // The upright check bars stand beside header and drawing: even A5 has 4 in of height there.
  const headerWidth = width - SIDE_BAR_MM - GAP_MM;
  const header: Box = { left, top: PAGE_MARGIN_MM, width: headerWidth, height: HEADER_MM };
  const foot: Box = {
    left,
    top: size.heightMm - PAGE_MARGIN_MM - footHeight,
    width,
    height: footHeight,
  };
  const top = PAGE_MARGIN_MM + HEADER_MM;
  const height = foot.top - GAP_MM - top;
  const rest = { size, header, foot, isFootInOneRow };
  return orientation === "landscape"
    ? { ...rest, ...besideDrawing({ left, top, width, height }, size.widthMm) }
    : { ...rest, ...belowDrawing({ left, top, width, height }, size.heightMm) };
}

type Middle = Pick<PageFrame, "drawing" | "panel" | "sideBar">;

function besideDrawing({ left, top, width, height }: Box, pageMm: number): Middle {
  const panelWidth = clamp(pageMm * 0.22, 48, 84);
  const panelLeft = left + width - panelWidth;
  return {
    drawing: inset({ left, top, width: width - panelWidth - 3, height }),
    panel: [{ left: panelLeft, top, width: panelWidth - SIDE_BAR_MM - GAP_MM, height }],
    sideBar: sideBar(left + width, top + height),
  };
}

function belowDrawing({ left, top, width, height }: Box, pageMm: number): Middle {
  const panelHeight = clamp(pageMm * 0.23, 44, 84);
  const upper = height - panelHeight - GAP_MM;
  const columns = width < FOOT_IN_ONE_ROW_MM ? 2 : 3;
  const columnWidth = (width - 5 * (columns - 1)) / columns;
  return {
    drawing: inset({ left, top, width: width - SIDE_BAR_MM - GAP_MM, height: upper }),
    panel: Array.from({ length: columns }, (_, index) => ({
      left: left + index * (columnWidth + 5),
      top: top + upper + GAP_MM,
      width: columnWidth,
      height: panelHeight,
    })),
    sideBar: sideBar(left + width, top + upper),
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
