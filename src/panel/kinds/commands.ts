import { type Command, opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import * as words from "./command-words.ts";

const kindsDialog = dialog(
  "own-kinds",
  async () => (await import("./OwnKindsDialog.tsx")).OwnKindsDialog,
);

export const ownKinds = opening(kindsDialog, {
  name: words.ownKinds,
  group: "lists",
});

export const sourceDialog = dialog(
  "new-source",
  async () => (await import("./SourceDialog.tsx")).SourceDialog,
);

export const newSource = {
  id: "new-source",
  name: words.newSource,
  group: "objects",
  also: words.newSourceAlso,
  run: () => sourceDialog.open({ given: null }),
} as const satisfies Command;
