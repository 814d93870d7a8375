import { setLocked } from "../../core/edits/lock.ts";
import { CheckField } from "../form/ChoiceField.tsx";
import { commit, planNow } from "../state/plan-actions.ts";
import type { SelectedObjects } from "../state/selected-objects.ts";
import * as texts from "./dialog-words.ts";
import * as steps from "./step-words.ts";

interface LockFieldProps {
  readonly selected: SelectedObjects;
  /** What undo calls them. */
  readonly names: string;
}

/** Whether what is selected stays as it lies. */
export function LockField({ selected, names }: LockFieldProps) {
  const items = [...selected.beds, ...selected.plantings, ...selected.surroundings];
  const locked = items.filter((item) => item.locked === true).length;
  const isPart = locked > 0 && locked < items.length;
  const set = (isOn: boolean) => {
    const ids = items.map(({ id }) => id);
    commit(setLocked(planNow().layoutId, ids, isOn, (isOn ? steps.lock : steps.unlock)(names)));
  };
  return (
    <CheckField
      label={isPart ? texts.someLocked(locked, items.length) : texts.locked}
      isOn={locked === items.length}
      onSet={set}
    />
  );
}
