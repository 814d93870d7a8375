/** Commands of clearing: their names, further words they are found by, and why they cannot be used. */

export const clearEverything = "Clear everything ...";
export const clearEverythingAlso = "solve all conflicts together";
export const noConflict = "There is no conflict";
