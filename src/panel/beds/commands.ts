/** Commands on beds and ground, and on how objects lie to each other. */
import { layoutOf } from "../../core/model/layouts.ts";
import { alignSides } from "../commands/align-words.ts";
import {
  type Command,
  type Now,
  needsOne,
  needsSelection,
  needsTwo,
  opening,
  withLoaded,
} from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import * as words from "./command-words.ts";

const newBedDialog = dialog(
  "new-bed",
  async () => (await import("./NewBedDialog.tsx")).NewBedDialog,
);
const bedRowsDialog = dialog(
  "bed-rows",
  async () => (await import("./BedRowsDialog.tsx")).BedRowsDialog,
);
const arrayDialog = dialog("array", async () => (await import("./ArrayDialog.tsx")).ArrayDialog);
const lineUpDialog = dialog(
  "line-up",
  async () => (await import("./LineUpDialog.tsx")).LineUpDialog,
);
const renameDialog = dialog(
  "rename",
  async () => (await import("./RenameObjectDialog.tsx")).RenameObjectDialog,
);
const numberBedsDialog = dialog(
  "number-beds",
  async () => (await import("./NumberBedsDialog.tsx")).NumberBedsDialog,
);
const shareBedDialog = dialog(
  "share-bed",
  async () => (await import("./ShareBedDialog.tsx")).ShareBedDialog,
);
const cutBedDialog = dialog(
  "cut-bed",
  async () => (await import("./CutBedDialog.tsx")).CutBedDialog,
);
const groundDialog = dialog(
  "new-ground",
  async () => (await import("./GroundDialog.tsx")).GroundDialog,
);

const loadActions = () => import("../commands/object-actions.ts");

function acting(act: (part: Awaited<ReturnType<typeof loadActions>>) => void): () => void {
  return () => void withLoaded(loadActions, act);
}

function needsLongBed({ selection, plan, layoutId }: Now): string | null {
  const bed = layoutOf(plan, layoutId).beds.find(({ id }) => id === selection[0]);
  if (selection.length !== 1 || !bed) return words.selectOneBed;
  return bed.outline.shape === "rectangle" ? null : words.rectangularBedsOnly;
}

export const newBed = opening(newBedDialog, {
  name: words.newBed,
  group: "objects",
});

export const bedRows = opening(bedRowsDialog, {
  name: words.bedRows,
  group: "objects",
  also: words.bedRowsAlso,
});

export const newGround = opening(groundDialog, {
  name: words.newGround,
  group: "objects",
  also: words.newGroundAlso,
});

export const numberBeds = opening(numberBedsDialog, {
  name: words.numberBeds,
  group: "objects",
  also: words.numberBedsAlso,
  whyNot: ({ plan, layoutId }) =>
    layoutOf(plan, layoutId).beds.length === 0 ? words.noBedYet : null,
});

export const shareBed = {
  id: "share-bed",
  name: words.shareBed,
  group: "objects",
  also: words.shareBedAlso,
  whyNot: needsLongBed,
  run: ({ selection: [id = ""] }) => shareBedDialog.open({ id }),
} as const satisfies Command;

export const cutBed = {
  id: "cut-bed",
  name: words.cutBed,
  group: "objects",
  also: words.cutBedAlso,
  whyNot: needsLongBed,
  run: ({ selection: [id = ""] }) => cutBedDialog.open({ id }),
} as const satisfies Command;

export const bedCommands = [
  {
    id: "rename",
    name: words.rename,
    group: "objects",
    keys: [{ key: "F2" }],
    also: words.renameAlso,
    whyNot: needsOne,
    run: ({ selection: [id = ""] }) => renameDialog.open({ id }),
  },
  opening(arrayDialog, {
    name: words.array,
    group: "objects",
    also: words.arrayAlso,
    whyNot: needsSelection,
  }),
  newBed,
  bedRows,
  newGround,
  numberBeds,
  shareBed,
  cutBed,
] as const satisfies readonly Command[];

export const lineUpCommands = [
  ...alignSides.map(
    ({ side, command }) =>
      ({
        id: `align-${side}`,
        name: command,
        group: "line-up",
        also: words.alignAlso,
        whyNot: needsTwo,
        run: acting((actions) => actions.alignSelection(side, "first")),
      }) as const satisfies Command,
  ),
  {
    id: "spread-across",
    name: words.spreadAcross,
    group: "line-up",
    also: words.spreadAcrossAlso,
    whyNot: needsTwo,
    run: acting((actions) => actions.spreadSelection("across", "first", null)),
  },
  {
    id: "spread-along",
    name: words.spreadAlong,
    group: "line-up",
    also: words.spreadAlongAlso,
    whyNot: needsTwo,
    run: acting((actions) => actions.spreadSelection("along", "first", null)),
  },
  opening(lineUpDialog, {
    name: words.lineUp,
    group: "line-up",
    also: words.lineUpAlso,
    whyNot: needsTwo,
  }),
] as const satisfies readonly Command[];
