import type { Context } from "konva/lib/Context.js";
import { Layer } from "konva/lib/Layer.js";
import { Shape } from "konva/lib/Shape.js";
import { useEffect, useRef } from "react";
import type { Brush } from "./brush.ts";
import { useStage } from "./SheetStage.tsx";
import type { Colours } from "./sheet-colours.ts";
import { useView } from "./view-store.ts";

interface SheetShapeProps {
  readonly colours: Colours;
  /** Draws the whole layer in pixels; a new function means that it must be drawn again. */
  readonly draw: (brush: Brush) => void;
  /** Under the layers that were there before it. */
  readonly isLowest?: boolean;
}

interface Painted {
  readonly layer: Layer;
  readonly shape: Shape;
}

/** One layer with one shape that draws everything on it, at most once a frame. */
export function SheetShape({ colours, draw, isLowest = false }: SheetShapeProps) {
  const stage = useStage();
  const view = useView((state) => state.view);
  const widthPx = useView((state) => state.widthPx);
  const heightPx = useView((state) => state.heightPx);
  const ratio = useView((state) => state.ratio);
  const painted = useRef<Painted | null>(null);
  useEffect(() => {
    if (!stage) return;
    const layer = new Layer({ listening: false });
    const shape = new Shape({ listening: false, perfectDrawEnabled: false });
    layer.add(shape);
    stage.add(layer);
    if (isLowest) layer.moveToBottom();
    painted.current = { layer, shape };
    return () => {
      layer.destroy();
    };
  }, [stage, isLowest]);
  useEffect(() => {
    const { layer, shape } = painted.current ?? {};
    if (!stage || !layer || !shape) return;
    if (layer.getCanvas().getPixelRatio() !== ratio) layer.getCanvas().setPixelRatio(ratio);
    shape.sceneFunc(({ _context: context }: Context) => {
      if (widthPx > 0 && heightPx > 0) draw({ context, view, colours, ratio, widthPx, heightPx });
    });
    layer.batchDraw();
  }, [stage, draw, view, colours, ratio, widthPx, heightPx]);
  return null;
}
