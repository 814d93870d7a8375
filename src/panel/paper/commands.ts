import { type Command, opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";

const paperDialog = dialog("paper", async () => (await import("./PaperDialog.tsx")).PaperDialog);
const filesDialog = dialog("files", async () => (await import("./FilesDialog.tsx")).FilesDialog);

export const paper = opening(paperDialog, {
  name: "Paper ...",
  group: "Plan",
  also: "print pdf plot map bed cards stakes labels packets calendar report",
});

export const paperCommands = [
  paper,
  opening(filesDialog, {
    name: "Files for others ...",
    group: "Plan",
    also: "export csv geojson",
  }),
] as const satisfies readonly Command[];
