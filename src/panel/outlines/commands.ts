import { opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";

const importDialog = dialog(
  "outline-import",
  async () => (await import("./OutlineImportDialog.tsx")).OutlineImportDialog,
);

export const importOutlines = opening(importDialog, {
  name: "Outlines from GPS or a map program ...",
  group: "Plan",
  also: "import gpx geojson track waypoints",
});
