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
import * as words from "./command-words.ts";

const loadActions = () => import("./object-actions.ts");

function acting(act: (part: Awaited<ReturnType<typeof loadActions>>) => void): () => void {
  return () => void withLoaded(loadActions, act);
}

export const undo = {
  id: "undo",
  name: words.undo,
  group: "edit",
  keys: [ctrl("z")],
  whyNot: ({ past, previewing }) =>
    past.length === 0 && previewing?.by !== "trial" ? words.nothingToUndo : null,
  run: (now) => now.undo(),
} as const satisfies Command;

export const redo = {
  id: "redo",
  name: words.redo,
  group: "edit",
  keys: [ctrl("z", true), ctrl("y")],
  whyNot: ({ future }) => (future.length === 0 ? words.nothingToRedo : null),
  run: (now) => now.redo(),
} as const satisfies Command;

export const deleteSelected = {
  id: "delete",
  name: words.deleteSelected,
  group: "edit",
  keys: [{ key: "Delete" }, onSheet("Backspace")],
  also: words.deleteSelectedAlso,
  whyNot: notAllLocked,
  run: () => removeNow(windowNow().selection),
} as const satisfies Command;

export const unlockAll = {
  id: "unlock-all",
  name: words.unlockAll,
  group: "objects",
  run: acting((actions) => actions.unlockEverything()),
} as const satisfies Command;

export const editCommands = [
  undo,
  redo,
  {
    id: "duplicate",
    name: words.duplicate,
    group: "edit",
    keys: [ctrl("d")],
    whyNot: needsSelection,
    run: acting((actions) => actions.duplicateSelection()),
  },
  deleteSelected,
  {
    id: "select-all",
    name: words.selectAll,
    group: "edit",
    keys: [ctrl("a")],
    run: acting((actions) => actions.selectAll()),
  },
  {
    id: "select-none",
    name: words.selectNone,
    group: "edit",
    whyNot: needsSelection,
    run: (now) => now.select([]),
  },
  {
    id: "select-kind",
    name: words.selectKind,
    group: "edit",
    whyNot: needsSelection,
    run: acting((actions) => actions.selectAlike("kind")),
  },
  {
    id: "select-variety",
    name: words.selectVariety,
    group: "edit",
    whyNot: needsSelection,
    run: acting((actions) => actions.selectAlike("variety")),
  },
  {
    id: "select-bed",
    name: words.selectBed,
    group: "edit",
    whyNot: needsSelection,
    run: acting((actions) => actions.selectAlike("bed")),
  },
] as const satisfies readonly Command[];

export const objectCommands = [
  {
    id: "lock",
    name: words.lock,
    group: "objects",
    keys: [shift("L")],
    also: words.lockAlso,
    whyNot: (now) =>
      needsSelection(now) ?? (lockedShare(now) === "all" ? words.lockedAlready : null),
    run: acting((actions) => actions.lockSelection(true)),
  },
  {
    id: "unlock",
    name: words.unlock,
    group: "objects",
    keys: [shift("U")],
    also: words.unlockAlso,
    whyNot: (now) => needsSelection(now) ?? (lockedShare(now) === "none" ? words.notLocked : null),
    run: acting((actions) => actions.lockSelection(false)),
  },
  unlockAll,
  {
    id: "menu",
    name: words.menu,
    group: "objects",
    keys: [shift("F10"), { key: "ContextMenu" }],
    also: words.menuAlso,
    whyNot: needsSelection,
    run: acting((actions) => actions.openMenuOfSelection()),
  },
] as const satisfies readonly Command[];
