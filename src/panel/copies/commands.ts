import { type Command, opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";

const copiesDialog = dialog(
  "copies",
  async () => (await import("./CopiesDialog.tsx")).CopiesDialog,
);

/** The plan to a helper's phone, and what was written there back into it. */
export const helpersCopies = opening(copiesDialog, {
  name: "Helpers' copies ...",
  group: "Plan",
  also: "share send phone merge bring together returned",
}) satisfies Command;
