import { commandById } from "../commands/commands.ts";
import { FindField } from "../find/FindField.tsx";
import { ShowMenu } from "./ShowMenu.tsx";
import { keysText } from "../commands/shortcuts.ts";
import { viewNow } from "../state/view-state.ts";

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
