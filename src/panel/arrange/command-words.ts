/** Commands of arrange: their names, further words they are found by, and why they cannot be used. */

export const arrangeLayout = "Arrange this layout for me ...";
export const layOutSeedList = "Lay out the seed list ...";
export const layOutSeedListAlso = "place all varieties plant everything automatically";
export const nothingPlantedYet = "Nothing is planted yet";
