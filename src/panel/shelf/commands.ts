import { opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";

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
  name: "Seed lots as CSV",
  group: "Lists and figures",
  also: "import spreadsheet table",
});
