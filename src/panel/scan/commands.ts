import type { Command } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import * as words from "./command-words.ts";

export const scanDialog = dialog("scan", async () => (await import("./ScanDialog.tsx")).ScanDialog);

export const scanCode = {
  id: scanDialog.name,
  run: () => scanDialog.open({ isForWalk: false }),
  name: words.scanCode,
  group: "view",
  also: words.scanCodeAlso,
} as const satisfies Command;
