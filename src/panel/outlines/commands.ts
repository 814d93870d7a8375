import { type Command, opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import * as words from "./command-words.ts";

const importDialog = dialog(
  "outline-import",
  async () => (await import("./OutlineImportDialog.tsx")).OutlineImportDialog,
);

export const importOutlines = opening(importDialog, {
  name: words.importOutlines,
  group: "plan",
  also: words.importOutlinesAlso,
});

export const cornerList = dialog(
  "corner-list",
  async () => (await import("./CornerListDialog.tsx")).CornerListDialog,
);

export const outlineFromCorners = {
  id: "corner-list",
  name: words.outlineFromCorners,
  group: "objects",
  also: words.outlineFromCornersAlso,
  run: () => cornerList.open({ target: "bed" }),
} as const satisfies Command;
