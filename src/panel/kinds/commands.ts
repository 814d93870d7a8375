import { type Command, opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";

const kindsDialog = dialog(
  "own-kinds",
  async () => (await import("./OwnKindsDialog.tsx")).OwnKindsDialog,
);

export const ownKinds = opening(kindsDialog, {
  name: "Own kinds and figures",
  group: "Lists and figures",
});

export const sourceDialog = dialog(
  "new-source",
  async () => (await import("./SourceDialog.tsx")).SourceDialog,
);

export const newSource = {
  id: "new-source",
  name: "Add a pollen source ...",
  group: "Objects",
  also: "neighbour wild distance direction bearing",
  run: () => sourceDialog.open({ given: null }),
} as const satisfies Command;
