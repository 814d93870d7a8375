/** Has the shade of how much would cross worked out and drawn: fetched when it is first asked for. */
import type { CheckResult } from "../../core/checks/run-checks.ts";
import { shadeProblem } from "../../core/crossing-share/shade-problem.ts";
import { noShadeWords, shadeWords } from "../../core/crossing-share/shade-words.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { askForShade } from "../../store/threads/crossing-shade.ts";
import { useCrossingShadeState } from "../../store/window/crossing-shade.ts";
import { type Size, type View, visibleBounds } from "../scene/viewport.ts";
import * as said from "./words.ts";

export { drawCrossingShade } from "../draw/draw-crossing-shade.ts";
export { endShading } from "../../store/threads/crossing-shade.ts";

/** Shaded beyond the edge of the window, so that a small pan shows no bare ground. */
const MARGIN_PX = 80;

/** Asks for the shade of a planting, or says why there is none; returns what ends the asking. */
export function showShade(
  { standById, stands }: CheckResult,
  plantingId: string | undefined,
  view: View,
  size: Size,
): (() => void) | null {
  const { show } = useCrossingShadeState.getState();
  const { book } = usePlanStore.getState();
  const stand = standById.get(plantingId ?? "");
  const problem = stand ? shadeProblem(stand, stands, book) : null;
  if (!stand?.planting || problem === null) {
    show(null, noShadeWords(stand));
    return null;
  }
  const words = shadeWords(stand.planting.code);
  return askForShade(
    problem,
    visibleBounds(view, size, MARGIN_PX),
    (made) => show(made, words),
    () => show(null, said.shadeFailed),
  );
}
