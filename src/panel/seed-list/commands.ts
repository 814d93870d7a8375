import { layoutOf } from "../../core/model/layouts.ts";
import { type Command, opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import * as words from "./command-words.ts";

/** Placing a variety in a bed; what is null is asked for. */
export const placeDialog = dialog(
  "place",
  async () => (await import("./PlaceDialog.tsx")).PlaceDialog,
);
/** One variety; null: a new one. */
export const varietyDialog = dialog(
  "variety",
  async () => (await import("./VarietyDialog.tsx")).VarietyDialog,
);
const listDialog = dialog(
  "variety-list",
  async () => (await import("./VarietyCsvDialog.tsx")).VarietyCsvDialog,
);

export const placeVariety = {
  id: "place",
  name: words.placeVariety,
  group: "objects",
  also: words.placeVarietyAlso,
  run: ({ plan, layoutId, selection }) => {
    const bed = layoutOf(plan, layoutId).beds.find(({ id }) => selection.includes(id));
    placeDialog.open({ varietyId: null, bedId: bed?.id ?? null });
  },
} as const satisfies Command;

export const newVariety = {
  id: "new-variety",
  name: words.newVariety,
  group: "objects",
  run: () => varietyDialog.open({ id: null }),
} as const satisfies Command;

export const varietyList = opening(listDialog, {
  name: words.varietyList,
  group: "lists",
  also: words.varietyListAlso,
});

export const seedListCommands = [
  placeVariety,
  newVariety,
  varietyList,
] as const satisfies readonly Command[];
