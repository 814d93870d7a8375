import type { Context } from "konva/lib/Context.js";
import type { Layer as LayerNode } from "konva/lib/Layer.js";
import { useCallback, useEffect, useRef } from "react";
import { Layer, Shape } from "react-konva/lib/ReactKonvaCore.js";
import type { Brush } from "../draw/brush.ts";
import type { Colours } from "../draw/sheet-colours.ts";
import { useView } from "../scene/view-store.ts";

interface SheetShapeProps {
  readonly colours: Colours;
  /** Draws the whole layer in pixels; a new function means that it must be drawn again. */
  readonly draw: (brush: Brush) => void;
}

/** One layer with one shape that draws everything on it, at most once a frame. */
export function SheetShape({ colours, draw }: SheetShapeProps) {
  const view = useView((state) => state.view);
  const widthPx = useView((state) => state.widthPx);
  const heightPx = useView((state) => state.heightPx);
  const ratio = useView((state) => state.ratio);
  const layer = useRef<LayerNode>(null);
  const paint = useCallback(
    ({ _context: context }: Context) => {
      if (widthPx > 0 && heightPx > 0) draw({ context, view, colours, ratio, widthPx, heightPx });
    },
    [draw, view, colours, ratio, widthPx, heightPx],
  );
  useEffect(() => {
    layer.current?.getCanvas().setPixelRatio(ratio);
    layer.current?.batchDraw();
  }, [ratio]);
  return (
    <Layer ref={layer} listening={false}>
      <Shape sceneFunc={paint} listening={false} perfectDrawEnabled={false} />
    </Layer>
  );
}
