/** Commands on what is selected. */
import { layoutOf } from "../../core/model/layouts.ts";
import { alignWords } from "./align-words.ts";
import {
  type Command,
  type Now,
  ctrl,
  lockedShare,
  needsOne,
  needsSelection,
  needsTwo,
  shift,
  withLoaded,
} from "./command.ts";
import { viewNow } from "../state/view-state.ts";

const loadActions = () => import("./object-actions.ts");
const loadClipboard = () => import("../clipboard/clipboard-actions.ts");

function acting(act: (part: Awaited<ReturnType<typeof loadActions>>) => void): () => void {
  return () => void withLoaded(loadActions, act);
}

function copying(act: (part: Awaited<ReturnType<typeof loadClipboard>>) => void): () => void {
  return () => void withLoaded(loadClipboard, act);
}

function notAllLocked(now: Now): string | null {
  if (now.selection.length === 0) return "Nothing is selected";
  return lockedShare(now) === "all" ? "It is locked" : null;
}

function needsLongBed({ selection, plan, layoutId }: Now): string | null {
  const bed = layoutOf(plan, layoutId).beds.find(({ id }) => id === selection[0]);
  if (selection.length !== 1 || !bed) return "Select one bed";
  return bed.outline.shape === "rectangle" ? null : "This works in rectangular beds";
}

export const editCommands: readonly Command[] = [
  {
    id: "undo",
    name: "Undo",
    group: "Edit",
    keys: [ctrl("z")],
    whyNot: ({ past }) => (past.length === 0 ? "There is nothing to undo" : null),
    run: (now) => now.undo(),
  },
  {
    id: "redo",
    name: "Redo",
    group: "Edit",
    keys: [ctrl("z", true), ctrl("y")],
    whyNot: ({ future }) => (future.length === 0 ? "There is nothing to redo" : null),
    run: (now) => now.redo(),
  },
  {
    id: "cut",
    name: "Cut",
    group: "Edit",
    keys: [ctrl("x")],
    isNative: true,
    whyNot: notAllLocked,
    run: copying((clipboard) => void clipboard.cutSelection()),
  },
  {
    id: "copy",
    name: "Copy",
    group: "Edit",
    keys: [ctrl("c")],
    isNative: true,
    whyNot: needsSelection,
    run: copying((clipboard) => void clipboard.copySelection()),
  },
  {
    id: "paste",
    name: "Paste",
    group: "Edit",
    keys: [ctrl("v")],
    isNative: true,
    run: copying((clipboard) => void clipboard.pasteFromClipboard()),
  },
  {
    id: "paste-text",
    name: "Paste from a text ...",
    group: "Edit",
    run: () => viewNow().ask({ kind: "paste", reason: null }),
  },
  {
    id: "duplicate",
    name: "Duplicate",
    group: "Edit",
    keys: [ctrl("d")],
    whyNot: needsSelection,
    run: acting((actions) => actions.duplicateSelection()),
  },
  {
    id: "delete",
    name: "Delete",
    group: "Edit",
    keys: [{ key: "Delete" }],
    also: "remove",
    whyNot: notAllLocked,
    run: acting((actions) => actions.deleteSelection()),
  },
  {
    id: "select-all",
    name: "Select all beds and plantings",
    group: "Edit",
    keys: [ctrl("a")],
    run: acting((actions) => actions.selectAll()),
  },
  {
    id: "select-none",
    name: "Select nothing",
    group: "Edit",
    whyNot: needsSelection,
    run: (now) => now.select([]),
  },
  {
    id: "select-kind",
    name: "Select all of the same kind",
    group: "Edit",
    whyNot: needsSelection,
    run: acting((actions) => actions.selectAlike("kind")),
  },
  {
    id: "select-variety",
    name: "Select all of the same variety",
    group: "Edit",
    whyNot: needsSelection,
    run: acting((actions) => actions.selectAlike("variety")),
  },
  {
    id: "select-bed",
    name: "Select all in the same bed",
    group: "Edit",
    whyNot: needsSelection,
    run: acting((actions) => actions.selectAlike("bed")),
  },
];

export const objectCommands: readonly Command[] = [
  {
    id: "rename",
    name: "Rename ...",
    group: "Objects",
    keys: [{ key: "F2" }],
    also: "code label name",
    whyNot: needsOne,
    run: ({ selection: [id = ""] }) => viewNow().ask({ kind: "rename-object", id }),
  },
  {
    id: "array",
    name: "Copy in rows and columns ...",
    group: "Objects",
    also: "array grid repeat",
    whyNot: needsSelection,
    run: () => viewNow().ask({ kind: "array" }),
  },
  {
    id: "lock",
    name: "Lock",
    group: "Objects",
    keys: [shift("L")],
    also: "fix hold",
    whyNot: (now) =>
      needsSelection(now) ?? (lockedShare(now) === "all" ? "It is locked already" : null),
    run: acting((actions) => actions.lockSelection(true)),
  },
  {
    id: "unlock",
    name: "Unlock",
    group: "Objects",
    keys: [shift("U")],
    also: "free release",
    whyNot: (now) =>
      needsSelection(now) ?? (lockedShare(now) === "none" ? "It is not locked" : null),
    run: acting((actions) => actions.lockSelection(false)),
  },
  {
    id: "unlock-all",
    name: "Unlock all",
    group: "Objects",
    run: acting((actions) => actions.unlockEverything()),
  },
  {
    id: "menu",
    name: "Menu of what is selected",
    group: "Objects",
    keys: [shift("F10"), { key: "ContextMenu" }],
    also: "actions context",
    whyNot: needsSelection,
    run: acting((actions) => actions.openMenuOfSelection()),
  },
  {
    id: "new-bed",
    name: "New bed by its size ...",
    group: "Objects",
    run: () => viewNow().ask({ kind: "new-bed" }),
  },
  {
    id: "bed-rows",
    name: "Rows of equal beds ...",
    group: "Objects",
    also: "many block series",
    run: () => viewNow().ask({ kind: "bed-rows" }),
  },
  {
    id: "place",
    name: "Place a variety ...",
    group: "Objects",
    also: "plant sow",
    run: acting((actions) => actions.placeInSelection()),
  },
  {
    id: "new-ground",
    name: "Add ground ...",
    group: "Objects",
    also: "hedge fence tree building water path slope neighbour surroundings",
    run: () => viewNow().ask({ kind: "new-ground" }),
  },
  {
    id: "number-beds",
    name: "Number the beds ...",
    group: "Objects",
    also: "codes renumber serpentine walking order letters",
    whyNot: ({ plan, layoutId }) =>
      layoutOf(plan, layoutId).beds.length === 0 ? "There is no bed yet" : null,
    run: () => viewNow().ask({ kind: "number-beds" }),
  },
  {
    id: "share-bed",
    name: "Share a bed among varieties ...",
    group: "Objects",
    also: "split divide several",
    whyNot: needsLongBed,
    run: ({ selection: [id = ""] }) => viewNow().ask({ kind: "share-bed", id }),
  },
  {
    id: "cut-bed",
    name: "Cut a bed in two ...",
    group: "Objects",
    also: "split divide",
    whyNot: needsLongBed,
    run: ({ selection: [id = ""] }) => viewNow().ask({ kind: "cut-bed", id }),
  },
  {
    id: "new-variety",
    name: "Add a variety ...",
    group: "Objects",
    run: () => viewNow().ask({ kind: "variety", id: null }),
  },
];

export const lineUpCommands: readonly Command[] = [
  ...alignWords.map(({ side, words }): Command => ({
    id: `align-${side}`,
    name: `Line up ${words}`,
    group: "Line up",
    also: "align",
    whyNot: needsTwo,
    run: acting((actions) => actions.alignSelection(side, "first")),
  })),
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
  {
    id: "line-up",
    name: "Line up and space ...",
    group: "Line up",
    also: "align distribute gap",
    whyNot: needsTwo,
    run: () => viewNow().ask({ kind: "line-up" }),
  },
];
