import { opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import * as words from "./command-words.ts";

/** Which lots a planting is sown from. */
export const sownFromDialog = dialog(
  "sown-from",
  async () => (await import("./SownFromDialog.tsx")).SownFromDialog,
);
const listDialog = dialog(
  "lot-list",
  async () => (await import("./LotCsvDialog.tsx")).LotCsvDialog,
);

export const lotList = opening(listDialog, {
  name: words.lotList,
  group: "lists",
  also: words.lotListAlso,
});
