import { useEffect } from "react";
import { runCommand } from "../panel/commands/command.ts";
import { usePreferences } from "../panel/state/preferences.ts";
import { commandOf } from "../panel/commands/shortcuts.ts";
import { viewNow } from "../panel/state/view-state.ts";
import { TYPED_INTO } from "../store/window/typed-into.ts";
import { useClipboard } from "./use-clipboard.ts";
import { allCommands } from "../panel/window/all-commands.ts";

/** Of those, the ones whose text is being changed at the moment. */
const BEING_CHANGED =
  'textarea:not([data-draft="none"]), input:is([type="text"], [type="search"]):not([data-draft="none"])';
/** The field that finds things in the plan: asked for once more, finding is the browser's. */
const FINDING = ".find-field";
/** Where keys mean the drawing. */
const SHEET = ".sheet[data-view]";
/** Where the menu key asks for our menu; elsewhere it is the browser's. */
const HAS_MENU = ".sheet, .object-table *, .particulars *";

/** The keys that work anywhere in the window, those of the clipboard among them. */
export function useShortcuts(): void {
  useClipboard();
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.isComposing) return;
      const { target } = event;
      const command = commandOf(allCommands, event, {
        isTyping: target instanceof Element && target.matches(TYPED_INTO),
        hasDraft: target instanceof Element && target.matches(BEING_CHANGED),
        isDialogOpen: viewNow().dialog !== null,
        hasLetterKeys: usePreferences.getState().hasLetterKeys,
        isOnSheet: target instanceof Element && target.matches(SHEET),
      });
      if (command === null) return;
      if (command.id === "menu" && !(target instanceof Element && target.matches(HAS_MENU))) return;
      if (command.id === "find" && target instanceof Element && target.matches(FINDING)) return;
      event.preventDefault();
      // What is being typed counts before the plan is written to a file.
      if (command.isEverywhere === true && target instanceof HTMLElement) target.blur();
      runCommand(command);
    };
    window.addEventListener("keydown", press);
    return () => window.removeEventListener("keydown", press);
  }, []);
}
