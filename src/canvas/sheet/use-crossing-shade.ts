/** Keeps the shade of how much would cross: asked for at rest only, never while anything moves. */
import { useEffect, useMemo } from "react";
import { useCrossingShadeState } from "../../store/window/crossing-shade.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import type { Brush } from "../draw/brush.ts";
import { useView } from "../scene/view-store.ts";
import { useSketch } from "../tools/sketch-store.ts";

/** Fetched when first asked for: no part of the first load. */
const loadShading = () => import("./show-shade.ts");

type Shading = Awaited<ReturnType<typeof loadShading>>;
let shading: Shading | null = null;

/** Draws the shade; null while there is none to draw. */
export function useCrossingShade(): ((brush: Brush) => void) | null {
  const isAsked = useCrossingShadeState((state) => state.isAsked);
  const shade = useCrossingShadeState((state) => state.shade);
  const result = usePlanStore((state) => state.result);
  const selection = useWindowStore((state) => state.selection);
  const isHeld = useSketch((state) => state.isMoving);
  const isPanned = useView((state) => state.isMoving);
  const view = useView((state) => state.view);
  const widthPx = useView((state) => state.widthPx);
  const heightPx = useView((state) => state.heightPx);
  const [only] = selection;
  const id = selection.length === 1 ? only : undefined;
  const isAtRest = !isHeld && !isPanned;
  useEffect(() => {
    if (!isAsked) return;
    return () => {
      useCrossingShadeState.getState().show(null, "");
      void loadShading().then(({ endShading }) => endShading());
    };
  }, [isAsked]);
  useEffect(() => {
    if (!isAsked || !isAtRest) return;
    let end: (() => void) | null = null;
    let isCurrent = true;
    const start = (loaded: Shading) => {
      shading = loaded;
      if (isCurrent) end = loaded.showShade(result, id, view, { widthPx, heightPx });
    };
    void loadShading().then(start);
    return () => {
      isCurrent = false;
      end?.();
    };
  }, [isAsked, isAtRest, result, id, view, widthPx, heightPx]);
  return useMemo(() => {
    const painter = shading;
    return isAsked && shade && painter ? (brush) => painter.drawCrossingShade(brush, shade) : null;
  }, [isAsked, shade]);
}
