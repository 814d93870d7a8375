import { type Command, opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";

const plotMapDialog = dialog(
  "plot-map",
  async () => (await import("./PlotMapDialog.tsx")).PlotMapDialog,
);
const filesDialog = dialog("files", async () => (await import("./FilesDialog.tsx")).FilesDialog);

export const plotMap = opening(plotMapDialog, {
  name: "Plot map ...",
  group: "Plan",
  also: "print pdf paper",
});

export const paperCommands = [
  plotMap,
  opening(filesDialog, {
    name: "Files for others ...",
    group: "Plan",
    also: "export csv geojson labels",
  }),
] as const satisfies readonly Command[];
