import { lockedCount, setLocked } from "../../core/edits/lock.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { CheckField } from "../form/ChoiceField.tsx";
import { commit, planNow } from "../state/plan-actions.ts";
import type { SelectedObjects } from "../state/selected-objects.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { unlockAll } from "../commands/edit-commands.ts";

interface LockFieldProps {
  readonly selected: SelectedObjects;
  /** What undo calls them. */
  readonly names: string;
}

/** Whether what is selected stays as it lies. */
export function LockField({ selected, names }: LockFieldProps) {
  const items = [...selected.beds, ...selected.plantings, ...selected.surroundings];
  const locked = items.filter((item) => item.locked === true).length;
  const part = locked === 0 || locked === items.length ? "" : ` (${locked} of ${items.length} are)`;
  const set = (isOn: boolean) => {
    const ids = items.map(({ id }) => id);
    commit(setLocked(planNow().layoutId, ids, isOn, `${isOn ? "Lock" : "Unlock"} ${names}`));
  };
  return (
    <CheckField
      label={`Locked: is not moved, resized or deleted${part}`}
      isOn={locked === items.length}
      onSet={set}
    />
  );
}

/** How much is locked, and the way to free it all; nothing when nothing is. */
export function LockedLine() {
  const plan = useShownPlan();
  const layoutId = usePlanStore((state) => state.layoutId);
  const count = lockedCount(plan, layoutId);
  if (count === 0) return null;
  return (
    <p className="locked-line soft">
      {count === 1 ? "1 object is locked." : `${count} objects are locked.`}{" "}
      <CommandButton of={unlockAll} className="link">
        Unlock all
      </CommandButton>
    </p>
  );
}
