import { Suspense, lazy } from "react";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { useClearingState } from "./clearing-state.ts";
import { clearEverything } from "./commands.ts";

const ClearEverything = lazy(async () => ({
  default: (await import("./ClearEverything.tsx")).ClearEverything,
}));

/** Above the findings: what clears all conflicts together, or the button that asks for it. */
export function ClearingHead() {
  const isAsked = useClearingState((state) => state.isAsked);
  const hasConflict = usePlanStore(({ kept }) => kept.result.counts.conflict > 0);
  if (isAsked) {
    return (
      <Suspense fallback={null}>
        <ClearEverything />
      </Suspense>
    );
  }
  if (!hasConflict) return null;
  return (
    <p className="finding-actions">
      <CommandButton of={clearEverything} />
    </p>
  );
}
