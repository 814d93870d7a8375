/** Commands on whatever is selected. */
import {
  type Command,
  ctrl,
  needsSelection,
  lockedShare,
  notAllLocked,
  onSheet,
  shift,
  withLoaded,
} from "./command.ts";
import { removeNow } from "./remove-objects.ts";
import { windowNow } from "../state/plan-actions.ts";

const loadActions = () => import("./object-actions.ts");

function acting(act: (part: Awaited<ReturnType<typeof loadActions>>) => void): () => void {
  return () => void withLoaded(loadActions, act);
}

export const undo = {
  id: "undo",
  name: "Undo",
  group: "Edit",
  keys: [ctrl("z")],
  whyNot: ({ past, previewing }) =>
    past.length === 0 && previewing?.by !== "trial" ? "There is nothing to undo" : null,
  run: (now) => now.undo(),
} as const satisfies Command;

export const redo = {
  id: "redo",
  name: "Redo",
  group: "Edit",
  keys: [ctrl("z", true), ctrl("y")],
  whyNot: ({ future }) => (future.length === 0 ? "There is nothing to redo" : null),
  run: (now) => now.redo(),
} as const satisfies Command;

export const deleteSelected = {
  id: "delete",
  name: "Delete",
  group: "Edit",
  keys: [{ key: "Delete" }, onSheet("Backspace")],
  also: "remove",
  whyNot: notAllLocked,
  run: () => removeNow(windowNow().selection),
} as const satisfies Command;

export const unlockAll = {
  id: "unlock-all",
  name: "Unlock all",
  group: "Objects",
  run: acting((actions) => actions.unlockEverything()),
} as const satisfies Command;

export const editCommands = [
  undo,
  redo,
  {
    id: "duplicate",
    name: "Duplicate",
    group: "Edit",
    keys: [ctrl("d")],
    whyNot: needsSelection,
    run: acting((actions) => actions.duplicateSelection()),
  },
  deleteSelected,
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
] as const satisfies readonly Command[];

export const objectCommands = [
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
  unlockAll,
  {
    id: "menu",
    name: "Menu of what is selected",
    group: "Objects",
    keys: [shift("F10"), { key: "ContextMenu" }],
    also: "actions context",
    whyNot: needsSelection,
    run: acting((actions) => actions.openMenuOfSelection()),
  },
] as const satisfies readonly Command[];
