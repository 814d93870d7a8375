/** What a code read leads to. */
import { windowNow } from "../state/plan-actions.ts";
import { lotsNow } from "../state/lots-state.ts";
import { viewNow } from "../state/view-state.ts";
import { walkTo } from "../state/walk-place.ts";

export function openLot(id: string, onClose: () => void): void {
  lotsNow().openLot(id);
  viewNow().showView("lots");
  onClose();
}

export function goOn(id: string, onClose: () => void): void {
  walkTo(id);
  onClose();
}

export function openPlot(id: string, onClose: () => void): void {
  windowNow().select([id]);
  windowNow().bringIntoView([id]);
  viewNow().showSheet();
  onClose();
}
