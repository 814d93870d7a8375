import type { Command } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";

/** The figures with their sources, at a kind; a figure can be picked for a variety. */
export const figuresDialog = dialog(
  "figures",
  async () => (await import("./FigurePlanDialog.tsx")).FigurePlanDialog,
);

export const figures = {
  id: "figures",
  name: "Figures",
  group: "Lists and figures",
  also: "isolation distance source",
  run: () => figuresDialog.open({ kindId: null, varietyId: null }),
} as const satisfies Command;
