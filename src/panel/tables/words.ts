/** Words of tables on the screen. */

export const none = "None yet: add the first on the sheet, or with the button above.";
export const actions = "Actions";
export const placeAVariety = "Place a variety";
export const numberTheBeds = "Number the beds";
export const newBedSize = "New bed by its size";
export const addGround = "Add ground";
export const placeVarietyIn = "Place a variety in";
export const placeShort = "Place";
