import { opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import * as words from "./command-words.ts";

const settingsDialog = dialog(
  "settings",
  async () => (await import("./SettingsDialog.tsx")).SettingsDialog,
);

export const plotDialog = dialog("plot", async () => (await import("./PlotDialog.tsx")).PlotDialog);

export const plotFacts = opening(plotDialog, {
  name: words.plotFacts,
  group: "plan",
  also: words.plotFactsAlso,
});

export const planSettings = opening(settingsDialog, {
  name: words.planSettings,
  group: "plan",
  also: words.planSettingsAlso,
});
