/** Dialogs of the plan as grown that other jobs open. */
import { dialog } from "../state/dialog.ts";

/** The harvest of a planting, or null: it is asked for, into a lot with how it was isolated. */
export const harvestDialog = dialog(
  "harvest",
  async () => (await import("./HarvestDialog.tsx")).HarvestDialog,
);
