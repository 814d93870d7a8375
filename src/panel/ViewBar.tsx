import { FindField } from "./FindField.tsx";
import { ShowMenu } from "./ShowMenu.tsx";
import { viewNow } from "./view-state.ts";

/** Finding, showing and hiding, and the list of all commands. */
export function ViewBar() {
  return (
    <div className="view-bar">
      <FindField />
      <ShowMenu />
      <button
        type="button"
        title="All commands (Ctrl or Cmd + K)"
        onClick={() => viewNow().ask({ kind: "commands" })}
      >
        Commands
      </button>
    </div>
  );
}
