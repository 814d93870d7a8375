/** Keeps the shade of how much would cross: asked for at rest only, never while anything moves. */
import { useEffect } from "react";
import type { Shade } from "../../core/crossing-share/shade.ts";
import { useCrossingShadeState } from "../../store/window/crossing-shade.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { useView } from "../scene/view-store.ts";
import { visibleBounds } from "../scene/viewport.ts";
import { useSketch } from "../tools/sketch-store.ts";
import * as said from "./words.ts";

/** Shaded beyond the edge of the window, so that a small pan shows no bare ground. */
const MARGIN_PX = 80;

/** Fetched when first asked for: no part of the first load. */
async function loadShading() {
  const [{ shadeProblem }, { noShadeWords, shadeWords }, { askForShade, endShading }] =
    await Promise.all([
      import("../../core/crossing-share/shade-problem.ts"),
      import("../../core/crossing-share/shade-words.ts"),
      import("../../store/threads/crossing-shade.ts"),
    ]);
  return { shadeProblem, noShadeWords, shadeWords, askForShade, endShading };
}

type Shading = Awaited<ReturnType<typeof loadShading>>;

/** The shade to be drawn, or null. */
export function useCrossingShade(): Shade | null {
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
    const { show } = useCrossingShadeState.getState();
    if (!isAsked || !isAtRest) return;
    let end: (() => void) | null = null;
    let isCurrent = true;
    const start = (loaded: Shading) => {
      if (!isCurrent) return;
      const { book } = usePlanStore.getState();
      const stand = result.standById.get(id ?? "");
      const problem = stand ? loaded.shadeProblem(stand, result.stands, book) : null;
      if (!stand?.planting || problem === null) {
        show(null, loaded.noShadeWords(stand));
        return;
      }
      const words = loaded.shadeWords(stand.planting.code);
      const bounds = visibleBounds(view, { widthPx, heightPx }, MARGIN_PX);
      end = loaded.askForShade(
        problem,
        bounds,
        (made) => show(made, words),
        () => show(null, said.shadeFailed),
      );
    };
    void loadShading().then(start);
    return () => {
      isCurrent = false;
      end?.();
    };
  }, [isAsked, isAtRest, result, id, view, widthPx, heightPx]);
  return isAsked ? shade : null;
}
