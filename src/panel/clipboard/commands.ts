import {
  type Command,
  ctrl,
  needsSelection,
  notAllLocked,
  withLoaded,
} from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import * as words from "./command-words.ts";

const loadDialogs = () => import("./ClipboardDialogs.tsx");
/** A text to paste objects from; the reason says why the clipboard would not do. */
export const pasteDialog = dialog("paste-text", async () => (await loadDialogs()).PasteDialog);
export const copiedTextDialog = dialog(
  "copied-text",
  async () => (await loadDialogs()).CopiedTextDialog,
);
/** Asks which figures count where a kind that is pasted has others in this plan. */
export const pasteKindsDialog = dialog(
  "paste-kinds",
  async () => (await import("./PasteKindsDialog.tsx")).PasteKindsDialog,
);

const load = () => import("./clipboard-actions.ts");

function copying(act: (part: Awaited<ReturnType<typeof load>>) => void): () => void {
  return () => void withLoaded(load, act);
}

export const clipboardCommands = [
  {
    id: "cut",
    name: words.cut,
    group: "edit",
    keys: [ctrl("x")],
    isNative: true,
    whyNot: notAllLocked,
    run: copying((clipboard) => void clipboard.cutSelection()),
  },
  {
    id: "copy",
    name: words.copy,
    group: "edit",
    keys: [ctrl("c")],
    isNative: true,
    whyNot: needsSelection,
    run: copying((clipboard) => void clipboard.copySelection()),
  },
  {
    id: "paste",
    name: words.paste,
    group: "edit",
    keys: [ctrl("v")],
    isNative: true,
    run: copying((clipboard) => void clipboard.pasteFromClipboard()),
  },
  {
    id: "paste-text",
    name: words.pasteText,
    group: "edit",
    run: () => pasteDialog.open({ reason: null }),
  },
] as const satisfies readonly Command[];
