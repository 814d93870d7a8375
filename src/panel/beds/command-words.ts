/** Commands of beds: their names, further words they are found by, and why they cannot be used. */

export const newBed = "New bed by its size ...";
export const bedRows = "Rows of equal beds ...";
export const bedRowsAlso = "many block series";
export const newGround = "Add ground ...";
export const newGroundAlso = "hedge fence tree building water path slope neighbour surroundings";
export const numberBeds = "Number the beds ...";
export const numberBedsAlso = "codes renumber serpentine walking order letters";
export const shareBed = "Share a bed among varieties ...";
export const shareBedAlso = "split divide several";
export const cutBed = "Cut a bed in two ...";
export const cutBedAlso = "split divide";
export const rename = "Rename ...";
export const renameAlso = "code label name";
export const array = "Copy in rows and columns ...";
export const arrayAlso = "array grid repeat";
export const spreadAcross = "Equal gaps across";
export const spreadAcrossAlso = "distribute space";
export const spreadAlong = "Equal gaps along";
export const spreadAlongAlso = "distribute space";
export const lineUp = "Line up and space ...";
export const lineUpAlso = "align distribute gap";
export const selectOneBed = "Select one bed";
export const rectangularBedsOnly = "This works in rectangular beds";
export const noBedYet = "There is no bed yet";
export const alignAlso = "align";
