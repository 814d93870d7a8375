/** Words of the parts of commands that are fetched when they are opened. */

export const actionsFor = (names: string | number) => `Actions for ${names}`;
export const actions = "Actions ...";
