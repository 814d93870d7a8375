import { usePlanStore } from "../../store/plan/plan-store.ts";
import { planNow } from "../state/plan-actions.ts";

/** Undo and redo; each says which step it goes to. */
export function HistoryButtons() {
  const back = usePlanStore((state) => state.past.at(-1)?.title);
  const forward = usePlanStore((state) => state.future.at(-1)?.title);
  return (
    <div className="history" role="group" aria-label="History">
      <button
        type="button"
        className="quiet"
        disabled={back === undefined}
        title={back === undefined ? "Nothing to undo" : `Undo: ${back}`}
        aria-label={back === undefined ? "Undo" : `Undo: ${back}`}
        onClick={() => planNow().undo()}
      >
        Undo
      </button>
      <button
        type="button"
        className="quiet"
        disabled={forward === undefined}
        title={forward === undefined ? "Nothing to redo" : `Redo: ${forward}`}
        aria-label={forward === undefined ? "Redo" : `Redo: ${forward}`}
        onClick={() => planNow().redo()}
      >
        Redo
      </button>
    </div>
  );
}
