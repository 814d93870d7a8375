import type { Command } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import * as words from "./command-words.ts";

/** A new lot; of a variety, or null: asked for. */
export const newLotDialog = dialog(
  "new-lot",
  async () => (await import("./NewLotDialog.tsx")).NewLotDialog,
);

export const newLot = {
  id: "new-lot",
  name: words.newLot,
  group: "objects",
  also: words.newLotAlso,
  whyNot: ({ plan }) => (plan.varieties.length === 0 ? words.addItsVarietyFirst : null),
  run: () => newLotDialog.open({ varietyId: null }),
} as const satisfies Command;
