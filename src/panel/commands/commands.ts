/** Every command of the program, once: menus, keys and the searchable list take them from here. */
import { type Command, type Now, runCommand } from "./command.ts";
import { editCommands, lineUpCommands, objectCommands } from "./commands-objects.ts";
import {
  helpCommands,
  layoutCommands,
  listCommands,
  planCommands,
  toolCommands,
  viewCommands,
} from "./commands-window.ts";

export const allCommands: readonly Command[] = [
  ...editCommands,
  ...objectCommands,
  ...lineUpCommands,
  ...viewCommands,
  ...toolCommands,
  ...layoutCommands,
  ...planCommands,
  ...listCommands,
  ...helpCommands,
];

const byId = new Map(allCommands.map((command) => [command.id, command]));

/** The command with an id; a mistyped one is a bug. */
export function commandById(id: string): Command {
  const command = byId.get(id);
  if (!command) throw new Error(`There is no command "${id}".`);
  return command;
}

export function runById(id: string): void {
  runCommand(commandById(id));
}

/** Why a command cannot be used at this moment, or null. */
export function whyNot(command: Command, now: Now): string | null {
  return command.whyNot?.(now) ?? null;
}
