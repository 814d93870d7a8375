import { opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import { yearsPageWords } from "./years-page-words.ts";

const yearsDialog = dialog("years", async () => (await import("./YearsDialog.tsx")).YearsDialog);

export const whichYear = opening(yearsDialog, {
  name: yearsPageWords.command,
  group: "Plan",
  also: yearsPageWords.commandAlso,
  whyNot: ({ plan }) => (plan.lots.length === 0 ? yearsPageWords.noLots : null),
});
