import { opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";

const kindsDialog = dialog(
  "own-kinds",
  async () => (await import("./OwnKindsDialog.tsx")).OwnKindsDialog,
);

export const ownKinds = opening(kindsDialog, {
  name: "Own kinds and figures",
  group: "Lists and figures",
});
