import { opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";

const settingsDialog = dialog(
  "settings",
  async () => (await import("./SettingsDialog.tsx")).SettingsDialog,
);

export const plotDialog = dialog("plot", async () => (await import("./PlotDialog.tsx")).PlotDialog);

export const plotFacts = opening(plotDialog, {
  name: "Your plot: size, place, frosts ...",
  group: "Plan",
  also: "site outline edge position latitude longitude frost first steps",
});

export const planSettings = opening(settingsDialog, {
  name: "Plan settings",
  group: "Plan",
  also: "units season level frost",
});
