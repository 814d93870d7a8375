/** Words of particulars on the screen. */

export const objectIsLocked = "1 object is locked.";
export const objectsAreLocked = (count: string | number) => `${count} objects are locked.`;
export const unlockAll = "Unlock all";
export const particulars = "Particulars";
export const nothingSelected = "nothing selected";
export const loadingTheFields = "Loading the fields ...";
export const selectBedPlantingNeighbour =
  "Select a bed, a planting or a neighbour on the sheet, in the tables or in a list.";
export const newBedSize = "New bed by its size";
export const addGroundHedgePath = "Add ground: hedge, path, tree ...";
