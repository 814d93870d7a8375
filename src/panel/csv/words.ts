/** Words of csv on the screen. */

export const outToASpreadsheet = "Out to a spreadsheet";
export const saveTheList = "Save the list";
export const inFromASpreadsheet = "In from a spreadsheet";
export const csvFile = "CSV file";
export const orPaste = "Or paste it, or type it, a line for each";
export const pastedList = "the pasted list";
export const nothingToAdd = "Nothing to add";
export const unknownColumns = (columns: readonly string[]) =>
  `Columns not known here: ${columns.join(", ")}.`;
export const theWholeRow = "the whole row";
export const gotExpected = "got {got}, expected {expected}";
export const nothing = "nothing";
export const andMore = (more: string | number) => `and ${more} more`;
export const downloadStarted = "Download started.";
export const usableRows = "Rows that can be used";
export const faultyRows = "Rows that cannot be used";
export const row = "Row";
export const column = "Column";
export const why = "Why";
export const takenFrom = (taken: string, file: string) => `${taken} from ${file}`;
