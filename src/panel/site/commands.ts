import { opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";

const settingsDialog = dialog(
  "settings",
  async () => (await import("./SettingsDialog.tsx")).SettingsDialog,
);

export const planSettings = opening(settingsDialog, {
  name: "Plan settings",
  group: "Plan",
  also: "units season level frost",
});
