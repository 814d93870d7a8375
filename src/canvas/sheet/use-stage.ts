/**
 * The stage of the drawing library, driven by plain effects. Its binding for React brings a second
 * reconciler into the first load, to keep a tree of four layers that never changes.
 */
import { Stage } from "konva/lib/Stage.js";
import { createContext, useCallback, useLayoutEffect, useState } from "react";
import { useView } from "../scene/view-store.ts";
import type { Size } from "../scene/viewport.ts";

/** The stage that the layers under it stand on; none before there is a place and a size for it. */
export const StageContext = createContext<Stage | null>(null);

/** A stage as large as said in the element that takes the ref, once there is a size. */
export function useStage({ widthPx, heightPx }: Size): {
  readonly place: React.RefCallback<HTMLDivElement> | null;
  readonly stage: Stage | null;
} {
  const [stage, setStage] = useState<Stage | null>(null);
  const put = useCallback((container: HTMLDivElement) => {
    // As large as it is to be: each change of its size draws everything anew.
    const { widthPx: width, heightPx: height } = useView.getState();
    const made = new Stage({ container, listening: false, width, height });
    setStage(made);
    return () => {
      setStage(null);
      made.destroy();
    };
  }, []);
  useLayoutEffect(() => {
    // Taking a size empties all canvases, also where it is the one they have.
    if (!stage || (stage.width() === widthPx && stage.height() === heightPx)) return;
    stage.size({ width: widthPx, height: heightPx });
  }, [stage, widthPx, heightPx]);
  return { place: widthPx > 0 && heightPx > 0 ? put : null, stage };
}
