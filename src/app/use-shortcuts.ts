import { useEffect } from "react";
import { usePreferences } from "../panel/preferences.ts";
import { type Command, commandOf } from "../panel/shortcuts.ts";
import { planNow } from "../panel/plan-actions.ts";
import { viewNow } from "../panel/view-state.ts";
import { savePlanFile } from "../store/plan-file.ts";

/** Fields where letters are text. Boxes, sliders and buttons let letters through. */
const TYPED_INTO = 'textarea, select, input:not([type="checkbox"], [type="radio"], [type="range"])';
/** Of those, the ones whose text is being changed at the moment. */
const BEING_CHANGED =
  'textarea:not([data-draft="none"]), input:is([type="text"], [type="search"]):not([data-draft="none"])';

function run(command: Command): void {
  const plan = planNow();
  const view = viewNow();
  switch (command.kind) {
    case "undo":
      return plan.undo();
    case "redo":
      return plan.redo();
    case "save":
      void savePlanFile();
      return;
    case "keys":
      return view.ask({ kind: "keys" });
    case "fit":
      return plan.bringIntoView("all");
    case "tool":
      view.showSheet();
      return plan.pickTool(command.tool);
  }
}

/** The keys that work anywhere in the window. */
export function useShortcuts(): void {
  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      if (event.defaultPrevented) return;
      const { target } = event;
      const command = commandOf(event, {
        isTyping: target instanceof Element && target.matches(TYPED_INTO),
        hasDraft: target instanceof Element && target.matches(BEING_CHANGED),
        isDialogOpen: viewNow().dialog !== null,
        hasLetterKeys: usePreferences.getState().hasLetterKeys,
      });
      if (command === null) return;
      event.preventDefault();
      // What is being typed counts before the plan is written to a file.
      if (command.kind === "save" && target instanceof HTMLElement) target.blur();
      run(command);
    };
    window.addEventListener("keydown", press);
    return () => window.removeEventListener("keydown", press);
  }, []);
}
