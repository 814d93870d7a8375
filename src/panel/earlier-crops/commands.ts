import { opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";

const cropsDialog = dialog(
  "earlier-crops",
  async () => (await import("./EarlierCropsDialog.tsx")).EarlierCropsDialog,
);

export const earlierCrops = opening(cropsDialog, {
  name: "Earlier crops",
  group: "Lists and figures",
  also: "rotation volunteers last year",
});
