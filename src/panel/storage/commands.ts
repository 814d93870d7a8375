import { opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";

const placesDialog = dialog(
  "storage-places",
  async () => (await import("./PlacesDialog.tsx")).PlacesDialog,
);

export const storagePlaces = opening(placesDialog, {
  name: "Storage places",
  group: "Lists and figures",
  also: "shelf fridge freezer humidity",
});
