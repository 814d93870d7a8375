/** Commands on beds and ground, and on how objects lie to each other. */
import { layoutOf } from "../../core/model/layouts.ts";
import { alignWords } from "../commands/align-words.ts";
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
  if (selection.length !== 1 || !bed) return "Select one bed";
  return bed.outline.shape === "rectangle" ? null : "This works in rectangular beds";
}

export const newBed = opening(newBedDialog, {
  name: "New bed by its size ...",
  group: "Objects",
});

export const bedRows = opening(bedRowsDialog, {
  name: "Rows of equal beds ...",
  group: "Objects",
  also: "many block series",
});

export const newGround = opening(groundDialog, {
  name: "Add ground ...",
  group: "Objects",
  also: "hedge fence tree building water path slope neighbour surroundings",
});

export const numberBeds = opening(numberBedsDialog, {
  name: "Number the beds ...",
  group: "Objects",
  also: "codes renumber serpentine walking order letters",
  whyNot: ({ plan, layoutId }) =>
    layoutOf(plan, layoutId).beds.length === 0 ? "There is no bed yet" : null,
});

export const shareBed = {
  id: "share-bed",
  name: "Share a bed among varieties ...",
  group: "Objects",
  also: "split divide several",
  whyNot: needsLongBed,
  run: ({ selection: [id = ""] }) => shareBedDialog.open({ id }),
} as const satisfies Command;

export const cutBed = {
  id: "cut-bed",
  name: "Cut a bed in two ...",
  group: "Objects",
  also: "split divide",
  whyNot: needsLongBed,
  run: ({ selection: [id = ""] }) => cutBedDialog.open({ id }),
} as const satisfies Command;

export const bedCommands = [
  {
    id: "rename",
    name: "Rename ...",
    group: "Objects",
    keys: [{ key: "F2" }],
    also: "code label name",
    whyNot: needsOne,
    run: ({ selection: [id = ""] }) => renameDialog.open({ id }),
  },
  opening(arrayDialog, {
    name: "Copy in rows and columns ...",
    group: "Objects",
    also: "array grid repeat",
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
  ...alignWords.map(
    ({ side, words }) =>
      ({
        id: `align-${side}`,
        name: `Line up ${words}`,
        group: "Line up",
        also: "align",
        whyNot: needsTwo,
        run: acting((actions) => actions.alignSelection(side, "first")),
      }) as const satisfies Command,
  ),
  {
    id: "spread-across",
    name: "Equal gaps across",
    group: "Line up",
    also: "distribute space",
    whyNot: needsTwo,
    run: acting((actions) => actions.spreadSelection("across", "first", null)),
  },
  {
    id: "spread-along",
    name: "Equal gaps along",
    group: "Line up",
    also: "distribute space",
    whyNot: needsTwo,
    run: acting((actions) => actions.spreadSelection("along", "first", null)),
  },
  opening(lineUpDialog, {
    name: "Line up and space ...",
    group: "Line up",
    also: "align distribute gap",
    whyNot: needsTwo,
  }),
] as const satisfies readonly Command[];
