import { newPlan, openPlanFile, savePlanFile } from "../../store/files/plan-file-late.ts";
import { isWorkedOn } from "../../store/keeping/current-plan.ts";
import { type Command, ctrl, opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import * as words from "./command-words.ts";

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
    name: words.newPlan,
    group: "plan",
    run: () => {
      if (isWorkedOn()) newPlanDialog.open();
      else void newPlan();
    },
  },
  {
    id: "open-plan",
    name: words.openPlan,
    group: "plan",
    run: () => void openPlanFile(),
  },
  {
    id: "save-plan",
    name: words.savePlan,
    group: "plan",
    keys: [ctrl("s")],
    isEverywhere: true,
    run: () => void savePlanFile(),
  },
  {
    id: "save-as",
    name: words.saveAs,
    group: "plan",
    run: () => void savePlanFile("new file"),
  },
  opening(keptPlansDialog, {
    name: words.keptPlans,
    group: "plan",
    also: words.keptPlansAlso,
  }),
] as const satisfies readonly Command[];

export const whatWentWrong = opening(diagnosticsDialog, {
  name: words.whatWentWrong,
  group: "help",
  also: words.whatWentWrongAlso,
});
