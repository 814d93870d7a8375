/** Words of the parts of window that are fetched when they are opened. */
import { formOf } from "../../core/words/plurals.ts";

export const commands = "Commands";
export const noCommandCalled = "No command is called that: type one word of what it does.";
export const searchCommands = "Search commands";
export const partCommandsName = "Part of a command's name";
export const keysHeading = "Keys";
export const singleLettersSignsAct = "Single letters and signs act as keys";
export const allCommands = "All commands";
export const resetAllKeys = "Reset all keys";
export const pressTheKeys = "Press the keys";
export const pressKeysFor = (command: string) => `Press the keys: ${command}`;
export const changeKeys = "Change";
export const changeKeysOf = (command: string) => `Change: ${command}`;
export const keysTaken = (keys: string, command: string) => `${keys} is taken: ${command}`;
export const emptySheet = "Sheet";
export const actionsFor = (names: string) => `Actions for ${names}`;
export const commandCount = (count: number) =>
  formOf(count, { one: `${count} command`, other: `${count} commands` });
