/** Commands of lots: their names, further words they are found by, and why they cannot be used. */

export const newLot = "Add a lot of seed ...";
export const newLotAlso = "packet harvest shelf";
export const addItsVarietyFirst = "Add its variety first";
