import type { Command } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";

/** A new lot; of a variety, or null: asked for. */
export const newLotDialog = dialog(
  "new-lot",
  async () => (await import("./NewLotDialog.tsx")).NewLotDialog,
);

export const newLot = {
  id: "new-lot",
  name: "Add a lot of seed ...",
  group: "Objects",
  also: "packet harvest shelf",
  whyNot: ({ plan }) => (plan.varieties.length === 0 ? "Add its variety first" : null),
  run: () => newLotDialog.open({ varietyId: null }),
} as const satisfies Command;
