import { layoutOf } from "../../core/model/layouts.ts";
import { type Command, opening } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";

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
  name: "Place a variety ...",
  group: "Objects",
  also: "plant sow",
  run: ({ plan, layoutId, selection }) => {
    const bed = layoutOf(plan, layoutId).beds.find(({ id }) => selection.includes(id));
    placeDialog.open({ varietyId: null, bedId: bed?.id ?? null });
  },
} as const satisfies Command;

export const newVariety = {
  id: "new-variety",
  name: "Add a variety ...",
  group: "Objects",
  run: () => varietyDialog.open({ id: null }),
} as const satisfies Command;

export const varietyList = opening(listDialog, {
  name: "Seed list as CSV",
  group: "Lists and figures",
  also: "import spreadsheet table",
});

export const seedListCommands = [
  placeVariety,
  newVariety,
  varietyList,
] as const satisfies readonly Command[];
