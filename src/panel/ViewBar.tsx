import { commandById } from "./commands.ts";
import { FindField } from "./FindField.tsx";
import { ShowMenu } from "./ShowMenu.tsx";
import { keysText } from "./shortcuts.ts";
import { viewNow } from "./view-state.ts";

/** Finding, showing and hiding, and the list of all commands. */
export function ViewBar() {
  return (
    <div className="view-bar">
      <FindField />
      <ShowMenu />
      <button
        type="button"
        title={`All commands (${keysText(commandById("commands"))})`}
        onClick={() => viewNow().ask({ kind: "commands" })}
      >
        Commands
      </button>
    </div>
  );
}
