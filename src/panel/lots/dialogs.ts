/** Dialogs that the view of lots and the particulars open; those that commands open stand beside the commands. */
import { dialog } from "../state/dialog.ts";

/** A germination test of a lot; id of the test, or null: a new one. */
export const testDialog = dialog(
  "germination-test",
  async () => (await import("./TestDialog.tsx")).TestDialog,
);
export const splitLotDialog = dialog(
  "split-lot",
  async () => (await import("./SplitLotDialog.tsx")).SplitLotDialog,
);
export const mixLotsDialog = dialog(
  "mix-lots",
  async () => (await import("./MixLotsDialog.tsx")).MixLotsDialog,
);
/** Lots that are no longer there: used up, or discarded and why. */
export const endLotsDialog = dialog(
  "end-lots",
  async () => (await import("./EndLotsDialog.tsx")).EndLotsDialog,
);
export const moveLotsDialog = dialog(
  "move-lots",
  async () => (await import("./MoveLotsDialog.tsx")).MoveLotsDialog,
);
