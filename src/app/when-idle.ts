/** Parts that are wanted soon but not for the first look come once the window has nothing to do. */
import { fetchLargeDrawing } from "../canvas/sheet/use-large-drawing.ts";
import { fetchDrawingTools } from "../canvas/tools/late-tool.ts";
import { fetchPlanFiles } from "../store/files/plan-file-late.ts";

/** At the latest so long after the plan is open, milliseconds. */
const LATEST_MS = 1500;

/** Settles when the window has drawn what it was given and has nothing to do. */
export function untilIdle(): Promise<void> {
  return new Promise((resolve) => {
    // Not every browser says when it is idle.
    if ("requestIdleCallback" in window) {
      requestIdleCallback(() => resolve(), { timeout: LATEST_MS });
    } else {
      setTimeout(resolve, LATEST_MS / 5);
    }
  });
}

export function fetchSoonWanted(): void {
  void Promise.allSettled([
    fetchDrawingTools(),
    fetchPlanFiles().then((files) => files.fetchPlanReader()),
    fetchLargeDrawing(),
    import("./further-faces.css"),
  ]);
}
