import type { Context } from "konva/lib/Context.js";
import { Layer } from "konva/lib/Layer.js";
import { Shape } from "konva/lib/Shape.js";
import { useContext, useEffect, useLayoutEffect, useState } from "react";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import type { Brush } from "../draw/brush.ts";
import type { Colours } from "../draw/sheet-colours.ts";
import { useView } from "../scene/view-store.ts";
import { useLabelTurn } from "./sheet-labels.ts";
import { StageContext } from "./use-stage.ts";

interface SheetShapeProps {
  readonly colours: Colours;
  /** Draws the whole layer in pixels; a new function means that it must be drawn again. */
  readonly draw: (brush: Brush) => void;
  /** Lies under all others, whenever it comes. */
  readonly isLowest?: boolean;
}

/** One layer with one shape that draws everything on it, at most once a frame. */
export function SheetShape({ colours, draw, isLowest = false }: SheetShapeProps) {
  const view = useView((state) => state.view);
  const widthPx = useView((state) => state.widthPx);
  const heightPx = useView((state) => state.heightPx);
  const ratio = useView((state) => state.ratio);
  const stage = useContext(StageContext);
  const [{ layer, shape }] = useState(emptyLayer);
  useLayoutEffect(() => {
    stage?.add(layer);
    if (stage && isLowest) layer.moveToBottom();
    return () => void layer.remove();
  }, [stage, layer, isLowest]);
  useLayoutEffect(() => {
    shape.sceneFunc(({ _context: context }: Context) => {
      // The stage takes a new size one side after the other, and is drawn after each.
      if (layer.width() !== widthPx || layer.height() !== heightPx) return;
      // Before a plan is open there is nothing to see.
      if (usePlanStore.getState().openings === 0) return;
      draw({ context, view, colours, ratio, widthPx, heightPx });
    });
  }, [layer, shape, draw, view, colours, ratio, widthPx, heightPx]);
  useLayoutEffect(() => {
    const canvas = layer.getCanvas();
    if (canvas.getPixelRatio() !== ratio) canvas.setPixelRatio(ratio);
    layer.batchDraw();
  }, [layer, ratio]);
  // Once words have found their places, they are drawn.
  useEffect(() => useLabelTurn.subscribe(() => void layer.batchDraw()), [layer]);
  return null;
}

function emptyLayer(): { readonly layer: Layer; readonly shape: Shape } {
  const layer = new Layer({ listening: false });
  const shape = new Shape({ listening: false, perfectDrawEnabled: false });
  layer.add(shape);
  return { layer, shape };
}
