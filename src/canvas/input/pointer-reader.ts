/** Pointer events as tools see them: pixels, metres, keys held, clicks counted. */
import type { Point } from "../../core/geometry/point.ts";
import { useSheetPreferences } from "../../store/window/sheet-preferences.ts";
import type { SheetPointer } from "../tools/tool.ts";
import { useView } from "../scene/view-store.ts";
import { toSheet } from "../scene/viewport.ts";

/** Presses nearer in time and place than this belong together. */
const DOUBLE_MS = 400;
const DOUBLE_PX = 6;

export interface PointerReader {
  readonly pxOf: (event: PointerEvent) => Point;
  readonly read: (event: PointerEvent) => SheetPointer;
  /** Counts a press: the second of a double click is 2. */
  readonly count: (event: PointerEvent) => void;
}

export function pointerReader(element: HTMLElement): PointerReader {
  let last = { time: -Infinity, px: { x: 0, y: 0 }, clicks: 0 };
  const pxOf = (event: PointerEvent): Point => {
    const box = element.getBoundingClientRect();
    return { x: event.clientX - box.left, y: event.clientY - box.top };
  };
  return {
    pxOf,
    read: (event) => {
      const px = pxOf(event);
      return {
        px,
        page: { x: event.clientX, y: event.clientY },
        at: toSheet(useView.getState().view, px),
        isShift: event.shiftKey,
        isFree: event.altKey || !useSheetPreferences.getState().isSnapping,
        isCoarse: event.pointerType === "touch",
        clicks: last.clicks,
      };
    },
    count: (event) => {
      const px = pxOf(event);
      const isAgain =
        event.timeStamp - last.time < DOUBLE_MS &&
        Math.hypot(px.x - last.px.x, px.y - last.px.y) < DOUBLE_PX;
      last = { time: event.timeStamp, px, clicks: isAgain ? last.clicks + 1 : 1 };
    },
  };
}
