/** Works out the clear ground of a planting while it is dragged, or when asked for. */
import { useEffect } from "react";
import { type ShownGround, useClearGroundState } from "../../store/window/clear-ground.ts";
import { useCrossingShadeState } from "../../store/window/crossing-shade.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { useSketch } from "../tools/sketch-store.ts";

/** It comes when it is first needed: it is not part of the first load. */
const loadShowing = () => import("./show-ground.ts");

type Showing = Awaited<ReturnType<typeof loadShowing>>;
let showing: Showing | null = null;

/** The ground to be drawn, or null. */
export function useClearGround(): ShownGround | null {
  const result = usePlanStore((state) => state.result);
  const selection = useWindowStore((state) => state.selection);
  const isMoving = useSketch((state) => state.isMoving);
  const isAskedAlone = useClearGroundState((state) => state.isAsked);
  // The rule's line stands beside the shade of how much would cross.
  const isAskedWithShade = useCrossingShadeState((state) => state.isAsked);
  const isAsked = isAskedAlone || isAskedWithShade;
  const shown = useClearGroundState((state) => state.shown);
  const [only] = selection;
  const stand = selection.length === 1 ? result.standById.get(only ?? "") : undefined;
  const isWanted = (isMoving || isAsked) && stand?.planting !== null && stand !== undefined;
  useEffect(() => {
    if (!isWanted) {
      useClearGroundState.getState().show(null);
      showing?.endAsking();
      return;
    }
    let isCurrent = true;
    const work = (loaded: Showing) => {
      showing = loaded;
      if (isCurrent) loaded.showGround(result, only);
    };
    // Once a frame at most; a result that comes before the frame takes this one's place.
    const frame = requestAnimationFrame(() => {
      if (showing) work(showing);
      else void loadShowing().then(work, () => null);
    });
    return () => {
      isCurrent = false;
      cancelAnimationFrame(frame);
    };
  }, [isWanted, result, only]);
  return isWanted ? shown : null;
}
