/** Words of particulars that are there with the first load. */
import { formOf } from "../../core/words/plurals.ts";

export const objectsAreLocked = (count: number) =>
  formOf(count, { one: "1 object is locked.", other: `${count} objects are locked.` });
export const unlockAll = "Unlock all";
export const particulars = "Particulars";
export const nothingSelected = "nothing selected";
export const loadingTheFields = "Loading the fields ...";
export const selectSomething =
  "Select a bed, a planting or a neighbour on the sheet, in the tables or in a list.";
export const newBedSize = "New bed by its size";
export const addGround = "Add ground: hedge, path, tree ...";
