import type { Command } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";

export const scanDialog = dialog("scan", async () => (await import("./ScanDialog.tsx")).ScanDialog);

export const scanCode = {
  id: scanDialog.name,
  run: () => scanDialog.open({ isForWalk: false }),
  name: "Scan a packet or stake",
  group: "View",
  also: "camera square code open lot plot",
} as const satisfies Command;
