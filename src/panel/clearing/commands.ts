import type { Command } from "../commands/command.ts";
import { viewNow } from "../state/view-state.ts";
import { useClearingState } from "./clearing-state.ts";

/** The fewest and mildest changes that clear all conflicts together, listed among the findings. */
export const clearEverything = {
  id: "clear-everything",
  name: "Clear everything ...",
  group: "Layouts",
  also: "solve all conflicts together",
  whyNot: ({ result }) =>
    result.findings.some(({ severity }) => severity === "conflict") ? null : "There is no conflict",
  run: () => {
    const { toggleDrawer, showView } = viewNow();
    // On a narrow screen the sheet lies bare then, and the findings come up over it.
    showView("sheet");
    toggleDrawer("findings");
    useClearingState.getState().ask(true);
  },
} as const satisfies Command;
