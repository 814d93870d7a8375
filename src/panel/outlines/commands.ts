import { type Command, opening } from "../commands/command.ts";
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

export const cornerList = dialog(
  "corner-list",
  async () => (await import("./CornerListDialog.tsx")).CornerListDialog,
);

export const outlineFromCorners = {
  id: "corner-list",
  name: "Outline from its corners ...",
  group: "Objects",
  also: "coordinates list paste survey bearing curve polygon",
  run: () => cornerList.open({ target: "bed" }),
} as const satisfies Command;
