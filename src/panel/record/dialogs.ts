import { dialog } from "../state/dialog.ts";

export const entryDialog = dialog(
  "entry",
  async () => (await import("./EntryDialog.tsx")).EntryDialog,
);

export const whoDialog = dialog("who", async () => (await import("./WhoDialog.tsx")).WhoDialog);
