import { newPlan, openPlanFile, savePlanFile } from "../../store/files/plan-file-late.ts";
import { isWorkedOn } from "../../store/keeping/current-plan.ts";
import { type Command, ctrl, opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";

const keptPlansDialog = dialog(
  "kept-plans",
  async () => (await import("./KeptPlansDialog.tsx")).KeptPlansDialog,
);
const newPlanDialog = dialog(
  "new-plan",
  async () => (await import("./NewPlanDialog.tsx")).NewPlanDialog,
);
const diagnosticsDialog = dialog(
  "diagnostics",
  async () => (await import("./DiagnosticsDialog.tsx")).DiagnosticsDialog,
);

export const keepingCommands = [
  {
    id: "new-plan",
    name: "New plan",
    group: "Plan",
    run: () => {
      if (isWorkedOn()) newPlanDialog.open();
      else void newPlan();
    },
  },
  {
    id: "open-plan",
    name: "Open a plan file ...",
    group: "Plan",
    run: () => void openPlanFile(),
  },
  {
    id: "save-plan",
    name: "Save a plan file",
    group: "Plan",
    keys: [ctrl("s")],
    isEverywhere: true,
    run: () => void savePlanFile(),
  },
  {
    id: "save-as",
    name: "Save as another file ...",
    group: "Plan",
    run: () => void savePlanFile("new file"),
  },
  opening(keptPlansDialog, {
    name: "Kept plans ...",
    group: "Plan",
    also: "earlier backup",
  }),
] as const satisfies readonly Command[];

export const whatWentWrong = opening(diagnosticsDialog, {
  name: "Trouble report",
  group: "Help",
  also: "errors fault",
});
