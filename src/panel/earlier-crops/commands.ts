import { opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import * as words from "./command-words.ts";

const cropsDialog = dialog(
  "earlier-crops",
  async () => (await import("./EarlierCropsDialog.tsx")).EarlierCropsDialog,
);

export const earlierCrops = opening(cropsDialog, {
  name: words.earlierCrops,
  group: "lists",
  also: words.earlierCropsAlso,
});
