/** Where the sheet is looked at. Never part of the plan, never in its history. */
import { create } from "zustand";
import type { Bounds } from "../../core/geometry/bounds.ts";
import type { Point } from "../../core/geometry/point.ts";
import {
  type Inset,
  type Size,
  type View,
  fittedView,
  isFarLarger,
  pannedBy,
  resizedView,
  stayingView,
  zoomedAbout,
} from "./viewport.ts";

/** Room for the grid's letters and numbers, the north arrow and the scale bar. */
const FIT_INSET: Inset = { left: 40, top: 34, right: 40, bottom: 58 };

/** Sheets less wide than this are those of phones. */
export const NARROW_PX = 520;

interface ViewStore extends Size {
  readonly view: View;
  /** Device pixels to a CSS pixel. */
  readonly ratio: number;
  /** What the view was fitted to and still shows, until it is panned or zoomed by hand. */
  readonly fitted: Bounds | null;
  /** While it is being panned or zoomed the drawing may be a moved picture of itself. */
  readonly isMoving: boolean;
  /** @param movedPx how far its corner moved where only something beside it changed; null: the window did */
  readonly resize: (size: Size, movedPx: Point | null) => void;
  readonly setRatio: (ratio: number) => void;
  readonly fit: (bounds: Bounds) => void;
  readonly pan: (dxPx: number, dyPx: number) => void;
  readonly zoom: (about: Point, factor: number) => void;
}

/** The view rests when it has not been moved for so long, milliseconds. */
const REST_MS = 140;

let restTimer: ReturnType<typeof setTimeout> | null = null;

/** Says that the view moves, until it has rested for a while. */
function moving(rest: () => void): { readonly isMoving: true } {
  if (restTimer !== null) clearTimeout(restTimer);
  restTimer = setTimeout(rest, REST_MS);
  return { isMoving: true };
}

export const useView = create<ViewStore>()((set) => {
  const rest = () => set({ isMoving: false });
  return {
    view: { scale: 24, x: 0, y: 0 },
    widthPx: 0,
    heightPx: 0,
    ratio: 1,
    fitted: null,
    isMoving: false,
    resize: (size, movedPx) =>
      set(({ view, fitted, widthPx, heightPx }) => {
        const isLost = fitted !== null && isFarLarger({ widthPx, heightPx }, size);
        const isStaying = movedPx && widthPx > 0 && !isLost;
        const stayed = isStaying ? stayingView(view, movedPx, fitted, size) : null;
        const anew = () =>
          fitted
            ? fittedView(fitted, size, FIT_INSET)
            : resizedView(view, { widthPx, heightPx }, size);
        return { ...size, view: stayed ?? anew() };
      }),
    setRatio: (ratio) => set({ ratio }),
    fit: (bounds) =>
      set((state) => ({ view: fittedView(bounds, state, FIT_INSET), fitted: bounds })),
    pan: (dxPx, dyPx) =>
      set(({ view }) => ({ view: pannedBy(view, dxPx, dyPx), fitted: null, ...moving(rest) })),
    zoom: (about, factor) =>
      set(({ view }) => ({
        view: zoomedAbout(view, about, factor),
        fitted: null,
        ...moving(rest),
      })),
  };
});

/** One press of a zoom button or key. */
const ZOOM_STEP = 1.25;

export function zoomAboutMiddle(direction: "in" | "out"): void {
  const { zoom, widthPx, heightPx } = useView.getState();
  const middle = { x: widthPx / 2, y: heightPx / 2 };
  zoom(middle, direction === "in" ? ZOOM_STEP : 1 / ZOOM_STEP);
}
