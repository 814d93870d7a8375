/** Commands of kinds: their names, further words they are found by, and why they cannot be used. */

export const ownKinds = "Own kinds and figures";
export const newSource = "Add a pollen source ...";
export const newSourceAlso = "neighbour wild distance direction bearing";
