import { opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import { commandWords } from "./command-words.ts";

const yearsDialog = dialog("years", async () => (await import("./YearsDialog.tsx")).YearsDialog);

export const whichYear = opening(yearsDialog, {
  name: commandWords.name,
  group: "plan",
  also: commandWords.also,
  whyNot: ({ plan }) => (plan.lots.length === 0 ? commandWords.noLots : null),
});
