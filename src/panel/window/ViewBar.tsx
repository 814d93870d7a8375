import { FindField } from "../find/FindField.tsx";
import { ShowMenu } from "./ShowMenu.tsx";
import { keysText } from "../commands/shortcuts.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { commandList } from "./commands.ts";
import * as texts from "./words.ts";

/** Finding, showing and hiding, and the list of all commands. */
export function ViewBar() {
  return (
    <div className="view-bar">
      <FindField />
      <ShowMenu />
      <CommandButton of={commandList} title={texts.allCommandsWithKeys(keysText(commandList))}>
        {texts.commands}
      </CommandButton>
    </div>
  );
}
