/** What a command is: something the program does, under one name wherever it is offered. */
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { commandNow, windowNow } from "../state/plan-actions.ts";
import * as words from "./command-words.ts";

/** Keys pressed together. The key is the printed character, or a name such as `Delete`. */
export interface Chord {
  readonly key: string;
  /** Ctrl, or Cmd on a Mac. */
  readonly isCommand?: boolean;
  readonly isShift?: boolean;
  /** Only while the sheet has the focus; such keys are never taken for letters. */
  readonly where?: "sheet";
}

/** In the order of the lists; what they are called stands in `groupNames`. */
export const commandGroups = [
  "edit",
  "objects",
  "line-up",
  "view",
  "tools",
  "layouts",
  "plan",
  "lists",
  "help",
] as const;
export type CommandGroup = (typeof commandGroups)[number];

/** The store at the moment of asking. */
export type Now = ReturnType<typeof commandNow>;

export interface Command {
  readonly id: string;
  readonly name: string;
  readonly group: CommandGroup;
  readonly keys?: readonly Chord[];
  /** Further words it is found by. */
  readonly also?: string;
  /** Its keys reach us as the browser's own copy, cut or paste. */
  readonly isNative?: boolean;
  /** Its keys work in dialogs and while typing as well. */
  readonly isEverywhere?: boolean;
  /** Why it cannot be used at this moment; null when it can. */
  readonly whyNot?: (now: Now) => string | null;
  readonly run: (now: Now) => void;
}

/** A command that opens the dialog of its name. */
export function opening<Id extends string>(
  dialog: { readonly name: Id; readonly open: () => void },
  about: Omit<Command, "id" | "run">,
): Command & { readonly id: Id } {
  return { id: dialog.name, run: () => dialog.open(), ...about };
}

export function ctrl(key: string, isShift = false): Chord {
  return { key, isCommand: true, isShift };
}

export function shift(key: string): Chord {
  return { key, isShift: true };
}

export function onSheet(key: string): Chord {
  return { key, where: "sheet" };
}

/** Why a command cannot be used at this moment, or null. */
export function whyNot(command: Command, now: Now): string | null {
  return command.whyNot?.(now) ?? null;
}

/** The same, followed: it changes with the plan and with what the window shows. */
export function useWhyNot(command: Command): string | null {
  useWindowStore(() => whyNot(command, commandNow()));
  return usePlanStore(() => whyNot(command, commandNow()));
}

export function needsSelection({ selection }: Now): string | null {
  return selection.length === 0 ? words.nothingIsSelected : null;
}

export function needsTwo({ selection }: Now): string | null {
  return selection.length < 2 ? words.selectTwo : null;
}

export function needsOne({ selection }: Now): string | null {
  return selection.length === 1 ? null : words.selectOne;
}

export function notAllLocked(now: Now): string | null {
  return needsSelection(now) ?? (lockedShare(now) === "all" ? words.isLocked : null);
}

/** Whether what is selected is locked: all of it, some of it, or none. */
export function lockedShare(now: Now): "all" | "some" | "none" {
  const layout = layoutOf(now.shown, now.layoutId);
  const chosen = new Set(now.selection);
  const items = [...layout.beds, ...layout.plantings, ...now.shown.surroundings].filter(({ id }) =>
    chosen.has(id),
  );
  const locked = items.filter((item) => item.locked === true).length;
  if (locked === 0) return "none";
  return locked === items.length ? "all" : "some";
}

/** Runs a command, or says why it cannot be run. */
export function runCommand(command: Command): void {
  const now = commandNow();
  const reason = whyNot(command, now);
  if (reason === null) command.run(now);
  else now.announce(words.notNow(command.name, reason));
}

/** Does something with a part of the program that is loaded only when it is first used. */
export async function withLoaded<Part>(
  load: () => Promise<Part>,
  act: (part: Part) => void,
): Promise<void> {
  const part = await load().catch(() => null);
  if (part === null) {
    windowNow().announce(words.partNotLoaded);
  } else act(part);
}
