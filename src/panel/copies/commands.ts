import { type Command, opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import * as words from "./command-words.ts";

const copiesDialog = dialog(
  "copies",
  async () => (await import("./CopiesDialog.tsx")).CopiesDialog,
);

/** The plan to a helper's phone, and what was written there back into it. */
export const helpersCopies = opening(copiesDialog, {
  name: words.helpersCopies,
  group: "plan",
  also: words.helpersCopiesAlso,
}) satisfies Command;
