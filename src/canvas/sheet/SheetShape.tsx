import { createContext, useContext, useEffect, useLayoutEffect, useState } from "react";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import type { Brush } from "../draw/brush.ts";
import type { Colours } from "../draw/sheet-colours.ts";
import { useView } from "../scene/view-store.ts";
import { useLabelTurn } from "./sheet-labels.ts";
import { SheetLayer } from "./sheet-layer.ts";

/** The element the layers lie in; none before the sheet has a size. */
export const LayersPlace = createContext<HTMLElement | null>(null);

/** Draws in pixels; a new function means that there is something else to draw. */
export type Drawing = (brush: Brush) => void;

interface SheetShapeProps {
  readonly colours: Colours;
  /** All of the layer; null while there is nothing to draw. */
  readonly draw: Drawing | null;
  /** Lies under all others, whenever it comes. */
  readonly isLowest?: boolean;
}

/** One layer of the sheet, drawn at most once a frame. */
export function SheetShape({ colours, draw, isLowest = false }: SheetShapeProps) {
  const view = useView((state) => state.view);
  const widthPx = useView((state) => state.widthPx);
  const heightPx = useView((state) => state.heightPx);
  const ratio = useView((state) => state.ratio);
  const place = useContext(LayersPlace);
  const [layer] = useState(() => new SheetLayer());
  // First it is told how it is drawn, then it is given room and drawn once.
  useLayoutEffect(() => {
    if (!draw) {
      layer.setPaint(null);
      return;
    }
    layer.setPaint((context) => {
      // Before a plan is open there is nothing to see.
      if (usePlanStore.getState().openings === 0) return;
      draw({ context, view, colours, ratio, widthPx, heightPx });
    });
  }, [layer, draw, view, colours, ratio, widthPx, heightPx]);
  useLayoutEffect(() => {
    if (place) layer.putInto(place, isLowest);
    return () => layer.remove();
  }, [place, layer, isLowest]);
  useLayoutEffect(() => {
    if (place) layer.takeSize({ widthPx, heightPx }, ratio);
  }, [place, layer, widthPx, heightPx, ratio]);
  // Browsers may throw away what a page out of sight has drawn.
  useEffect(() => {
    const redraw = () => layer.batchDraw();
    document.addEventListener("visibilitychange", redraw);
    return () => document.removeEventListener("visibilitychange", redraw);
  }, [layer]);
  // Once words have found their places, they are drawn.
  useEffect(() => useLabelTurn.subscribe(() => layer.batchDraw()), [layer]);
  return null;
}
