import type { Command } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import * as words from "./command-words.ts";

/** The figures with their sources, at a kind; a figure can be picked for a variety. */
export const figuresDialog = dialog(
  "figures",
  async () => (await import("./FigurePlanDialog.tsx")).FigurePlanDialog,
);

export const figures = {
  id: "figures",
  name: words.figures,
  group: "lists",
  also: words.figuresAlso,
  run: () => figuresDialog.open({ kindId: null, varietyId: null }),
} as const satisfies Command;
