/**
 * While a plan may only be looked at (still opening, open for editing in another tab), the store's
 * editing actions are replaced by ones that say why nothing changes. Selecting, zooming, layouts
 * and findings go on working.
 */
import type { Edit } from "../../core/edits/edit.ts";
import { type PreviewOwner, usePlanStore } from "../plan/plan-store.ts";
import { tell } from "./save-state.ts";

const LOOK_ONLY =
  "This plan is open in another tab. Here you can look at it, or take over and edit it here.";

/** The store's own actions, as they were before any guard. */
const original = usePlanStore.getState();
const editing = {
  preview: (edit: Edit, by?: PreviewOwner) => original.preview(edit, by),
  commit: (edit: Edit) => original.commit(edit),
  undo: () => original.undo(),
  redo: () => original.redo(),
};

/** Commits whether or not the guard is up: for changes that come from the stored plan. */
export function commitUnguarded(edit: Edit): void {
  editing.commit(edit);
}

export function guardEdits(reason: string): void {
  const refuse = () => {
    original.cancelPreview();
    original.announce(reason);
  };
  original.cancelPreview();
  // A drag asks for a preview on every frame; it is answered with silence, its end with the reason.
  usePlanStore.setState({ preview: () => undefined, commit: refuse, undo: refuse, redo: refuse });
}

export function allowEdits(): void {
  usePlanStore.setState(editing);
}

/** Another tab writes the plan: nothing is edited here, and that is said. */
export function lookOnly(): void {
  guardEdits(LOOK_ONLY);
  tell(LOOK_ONLY);
}
