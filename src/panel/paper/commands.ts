import { type Command, opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import * as words from "./command-words.ts";

const paperDialog = dialog("paper", async () => (await import("./PaperDialog.tsx")).PaperDialog);
const filesDialog = dialog("files", async () => (await import("./FilesDialog.tsx")).FilesDialog);

export const paper = opening(paperDialog, {
  name: words.paper,
  group: "plan",
  also: words.paperAlso,
});

export const paperCommands = [
  paper,
  opening(filesDialog, {
    name: words.files,
    group: "plan",
    also: words.filesAlso,
  }),
] as const satisfies readonly Command[];
