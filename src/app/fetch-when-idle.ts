/** Parts that are wanted soon but not for the first look come once the window has nothing to do. */
import { fetchDrawingTools } from "../canvas/tools/late-tool.ts";
import { fetchPlanFiles } from "../store/files/plan-file-late.ts";

/** At the latest so long after the plan is open, milliseconds. */
const LATEST_MS = 1500;

export function fetchWhenIdle(): void {
  const fetchAll = () => void Promise.allSettled([fetchDrawingTools(), fetchPlanFiles()]);
  // Not every browser says when it is idle.
  if ("requestIdleCallback" in window) requestIdleCallback(fetchAll, { timeout: LATEST_MS });
  else setTimeout(fetchAll, LATEST_MS / 5);
}
