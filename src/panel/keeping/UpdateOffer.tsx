import { usePlanStore } from "../../store/plan/plan-store.ts";
import {
  loadUpdate,
  postponeUpdate,
  useProgramUpdate,
} from "../../store/keeping/program-update.ts";

/** A newer version lies ready: offered between edits, and loaded only when asked for. */
export function UpdateOffer() {
  const isReady = useProgramUpdate((state) => state.isReady);
  const isEditing = usePlanStore((state) => state.previewing !== null);
  if (!isReady || isEditing) return null;
  return (
    <div className="notice" role="status">
      <p>A newer Wideberth is ready. The plan is saved first, then the page is loaded anew.</p>
      <button type="button" onClick={() => void loadUpdate()}>
        Load it now
      </button>
      <button type="button" onClick={postponeUpdate}>
        Later
      </button>
    </div>
  );
}
