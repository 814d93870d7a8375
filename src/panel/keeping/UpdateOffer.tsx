import { usePlanStore } from "../../store/plan/plan-store.ts";
import {
  loadUpdate,
  postponeUpdate,
  useProgramUpdate,
} from "../../store/keeping/program-update.ts";
import * as texts from "./words.ts";

/** A newer version lies ready: offered between edits, and loaded only when asked for. */
export function UpdateOffer() {
  const isReady = useProgramUpdate((state) => state.isReady);
  const isEditing = usePlanStore((state) => state.previewing !== null);
  if (!isReady || isEditing) return null;
  return (
    <div className="notice" role="status">
      <p>{texts.newerWideberthReadyPlan}</p>
      <button type="button" onClick={() => void loadUpdate()}>
        {texts.loadItNow}
      </button>
      <button type="button" onClick={postponeUpdate}>
        {texts.later}
      </button>
    </div>
  );
}
