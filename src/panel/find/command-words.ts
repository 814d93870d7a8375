/** Commands of find: their names, further words they are found by, and why they cannot be used. */

export const find = "Find by name or code";
export const findAlso = "search look for";
