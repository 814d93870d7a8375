import { type SaveStatus, useSaveState } from "../store/save-state.ts";

/** Whether the plan is kept, honestly. */
export function SaveStateLine() {
  const state = useSaveState((entry) => entry.state);
  const isReadOnly = useSaveState((entry) => entry.isReadOnly);
  return (
    <p className={`save-state ${isReadOnly ? "unsaved" : state.kind}`} role="status">
      {isReadOnly ? "Look only" : saveWords(state)}
    </p>
  );
}

function saveWords(state: SaveStatus): string {
  switch (state.kind) {
    case "loading":
      return "Opening ...";
    case "saving":
      return "Saving ...";
    case "saved":
      return `Saved ${state.at}`;
    case "unsaved":
      return "Not saved yet";
    case "failed":
      return "Not saved";
  }
}
