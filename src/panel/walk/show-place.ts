/** Keeps the place on the sheet in step with the position, while that is asked for. */
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { usePosition } from "../../store/window/position.ts";
import { useSheetPlace } from "../../store/window/sheet-place.ts";
import { planNow, windowNow } from "../state/plan-actions.ts";
import { faultWords, positionWords as words } from "./position-words.ts";
import { placeOnSheet } from "./use-place.ts";

function follow(): void {
  const found = placeOnSheet(planNow().plan.site, usePosition.getState().fix);
  const place = found && { ...found.at, accuracyM: found.accuracyM };
  if (place !== null || useSheetPlace.getState().place !== null) useSheetPlace.setState({ place });
}

usePosition.subscribe(follow);
usePlanStore.subscribe((state, before) => {
  if (state.plan.site !== before.plan.site) follow();
});

/** Asks for the position; what is heard is on the sheet as well. */
export function askPosition(): void {
  usePosition.getState().start();
}

/** Asks for the position and shows it on the sheet, or stops asking. */
export function toggleSheetPlace(): void {
  const { isOn, stop } = usePosition.getState();
  if (isOn) return stop();
  if (!planNow().plan.site.position) return windowNow().announce(words.noSite);
  askPosition();
  const { fault } = usePosition.getState();
  windowNow().announce(fault === null ? words.waiting : faultWords[fault]);
}
