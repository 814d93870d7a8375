/** Words of find on the screen. */

export const findHint = "Find by variety, code, kind or note";
export const find = "Find";
