/**
 * The stage of the drawing library, driven by plain effects. Its binding for React brings a second
 * reconciler into the first load, to keep a tree of four layers that never changes.
 */
import { Stage } from "konva/lib/Stage.js";
import { createContext, useLayoutEffect, useState } from "react";
import type { Size } from "../scene/viewport.ts";

/** The stage that the layers under it stand on; none before there is a place and a size for it. */
export const StageContext = createContext<Stage | null>(null);

/** A stage in the element given, as large as said, for as long as there is one. */
export function useStage(
  place: React.RefObject<HTMLDivElement | null>,
  { widthPx, heightPx }: Size,
): Stage | null {
  const [stage, setStage] = useState<Stage | null>(null);
  const hasSize = widthPx > 0 && heightPx > 0;
  useLayoutEffect(() => {
    if (!hasSize || !place.current) return;
    const made = new Stage({ container: place.current, listening: false });
    setStage(made);
    return () => {
      setStage(null);
      made.destroy();
    };
  }, [place, hasSize]);
  useLayoutEffect(() => {
    stage?.size({ width: widthPx, height: heightPx });
  }, [stage, widthPx, heightPx]);
  return stage;
}
