import { useClearGroundState } from "../../store/window/clear-ground.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";

/** What the dotted ground on the sheet means, or that there is none. */
export function ClearGroundLine() {
  const words = useClearGroundState((state) => state.shown?.words);
  return (
    <p className="clear-ground-line" role="status">
      {words}
    </p>
  );
}

/** Shows where the selected planting could lie, without dragging it. */
export function ClearGroundButton() {
  const isAsked = useClearGroundState((state) => state.isAsked);
  const ask = useClearGroundState((state) => state.ask);
  const hasPlanting = usePlanStore(
    ({ selection, result }) =>
      selection.length === 1 && Boolean(result.standById.get(selection[0] ?? "")?.planting),
  );
  return (
    <button
      type="button"
      className="tool"
      tabIndex={-1}
      aria-pressed={isAsked}
      disabled={!hasPlanting && !isAsked}
      title="Where the selected planting could lie without a conflict"
      onClick={() => ask(!isAsked)}
    >
      Clear ground
    </button>
  );
}
