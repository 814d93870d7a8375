import { opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";

const scanDialog = dialog("scan", async () => (await import("./ScanDialog.tsx")).ScanDialog);

export const scanCode = opening(scanDialog, {
  name: "Scan a packet or stake",
  group: "View",
  also: "camera square code open lot plot",
});
