import { lockedCount } from "../../core/edits/lock.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { unlockAll } from "../commands/edit-commands.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./words.ts";

/** How much is locked, and the way to free it all; nothing when nothing is. */
export function LockedLine() {
  const plan = useShownPlan();
  const layoutId = usePlanStore((state) => state.layoutId);
  const count = lockedCount(plan, layoutId);
  if (count === 0) return null;
  return (
    <p className="locked-line soft">
      {texts.objectsAreLocked(count)}{" "}
      <CommandButton of={unlockAll} className="act">
        {texts.unlockAll}
      </CommandButton>
    </p>
  );
}
