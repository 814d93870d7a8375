/** Which key does what. The sheet's own keys are listed here but handled by the sheet. */
import type { ToolName } from "../store/plan-store.ts";
import { toolEntries } from "./tools.ts";

export type Command =
  | { readonly kind: "undo" }
  | { readonly kind: "redo" }
  | { readonly kind: "save" }
  | { readonly kind: "keys" }
  | { readonly kind: "fit" }
  | { readonly kind: "tool"; readonly tool: ToolName };

/** What of a key press decides. */
export interface KeyPress {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

export interface KeySituation {
  /** The focus is where letters are text or pick an entry. */
  readonly isTyping: boolean;
  /** The focus is in a text that is being changed, with an undo of its own. */
  readonly hasDraft: boolean;
  readonly isDialogOpen: boolean;
  readonly hasLetterKeys: boolean;
}

/** The command of a key press, by the printed character; null when it is none of ours. */
export function commandOf(press: KeyPress, situation: KeySituation): Command | null {
  const key = press.key.toLowerCase();
  const isCommand = press.ctrlKey || press.metaKey;
  if (isCommand && !press.altKey && key === "s" && !press.shiftKey) return { kind: "save" };
  if (situation.isDialogOpen || press.altKey) return null;
  if (isCommand) {
    if (situation.hasDraft) return null;
    if (key === "z") return { kind: press.shiftKey ? "redo" : "undo" };
    return key === "y" && !press.shiftKey ? { kind: "redo" } : null;
  }
  if (situation.isTyping || !situation.hasLetterKeys) return null;
  if (press.key === "?") return { kind: "keys" };
  if (press.shiftKey) return null;
  if (key === "f") return { kind: "fit" };
  const tool = toolEntries.find((entry) => entry.key.toLowerCase() === key);
  return tool ? { kind: "tool", tool: tool.name } : null;
}

interface KeyLine {
  readonly key: string;
  readonly does: string;
}

export const keyList: readonly { readonly heading: string; readonly keys: readonly KeyLine[] }[] = [
  {
    heading: "Anywhere",
    keys: [
      { key: "Ctrl or Cmd + Z", does: "Undo" },
      { key: "Ctrl or Cmd + Shift + Z, Ctrl + Y", does: "Redo" },
      { key: "Ctrl or Cmd + S", does: "Save a plan file" },
      { key: "?", does: "Show this list" },
    ],
  },
  {
    heading: "Tools",
    keys: [
      ...toolEntries.map(({ key, label }) => ({ key, does: label })),
      { key: "F", does: "Fit all into the sheet" },
    ],
  },
  {
    heading: "On the sheet",
    keys: [
      { key: "Arrows", does: "Move what is selected; with nothing selected, move the view" },
      { key: "Shift + arrows", does: "Move it further" },
      { key: "Delete", does: "Delete what is selected" },
      { key: "+ and -", does: "Zoom in and out" },
      { key: "0", does: "Fit all into the sheet" },
      { key: "Space held", does: "Drag the view with any tool" },
      { key: "Enter", does: "Close the outline being drawn" },
      { key: "Backspace", does: "Take its last corner back" },
      { key: "Escape", does: "Cancel, then leave the tool, then select nothing" },
    ],
  },
  {
    heading: "On a bar of the bloom strip",
    keys: [
      { key: "Arrows", does: "Sow or set out a day earlier or later" },
      { key: "Shift + arrows", does: "A week earlier or later" },
      { key: "Escape", does: "Put it back" },
    ],
  },
  {
    heading: "In a field",
    keys: [
      { key: "Enter", does: "Apply what is typed" },
      { key: "Escape", does: "Bring the old value back" },
    ],
  },
];
