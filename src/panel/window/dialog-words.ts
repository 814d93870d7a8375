/** Words of the parts of window that are fetched when they are opened. */

export const commands = "Commands";
export const noCommandCalled = "No command is called that.";
export const searchCommands = "Search commands";
export const partCommandsName = "Part of a command's name";
export const keys = "Keys";
export const singleLettersSignsAct = "Single letters and signs act as keys";
export const allCommands = "All commands";
export const resetAllKeys = "Reset all keys";
export const pressTheKeys = (name: string | number) => `Press the keys: ${name}`;
export const change = (name: string | number) => `Change: ${name}`;
export const pressTheKeys2 = "Press the keys";
export const change2 = "Change";
export const actionsFor = (names: string | number) => `Actions for ${names}`;
