/** Drawing the edge of the site. */
import { useOutlineTarget } from "../../store/window/outline-target.ts";
import { windowNow } from "../state/plan-actions.ts";
import { viewNow } from "../state/view-state.ts";

/** Leaves the dialog for the sheet, where the edge is then drawn corner by corner. */
export function drawEdge(): void {
  viewNow().closeDialog();
  viewNow().showSheet();
  windowNow().pickTool("draw-outline");
  useOutlineTarget.setState({ target: "site" });
  // What was pressed may be gone by then; the keys are the drawing's from here on.
  requestAnimationFrame(() => {
    document.querySelector<HTMLElement>(".sheet[data-view]")?.focus();
  });
}
