import { opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import * as words from "./command-words.ts";

const placesDialog = dialog(
  "storage-places",
  async () => (await import("./PlacesDialog.tsx")).PlacesDialog,
);

export const storagePlaces = opening(placesDialog, {
  name: words.storagePlaces,
  group: "lists",
  also: words.storagePlacesAlso,
});
