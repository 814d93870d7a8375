import type { Command } from "../commands/command.ts";
import { viewNow } from "../state/view-state.ts";
import { useClearingState } from "./clearing-state.ts";
import * as words from "./command-words.ts";

/** The fewest and mildest changes that clear all conflicts together, listed among the findings. */
export const clearEverything = {
  id: "clear-everything",
  name: words.clearEverything,
  group: "layouts",
  also: words.clearEverythingAlso,
  // Asked on every frame of a drag: of what is kept, whose findings are counted already.
  whyNot: ({ kept: { result } }) => (result.counts.conflict > 0 ? null : words.noConflict),
  run: () => {
    const { toggleDrawer, showView } = viewNow();
    // On a narrow screen the sheet lies bare then, and the findings come up over it.
    showView("sheet");
    toggleDrawer("findings");
    useClearingState.getState().ask(true);
  },
} as const satisfies Command;
