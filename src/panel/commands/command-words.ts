/** Commands on whatever is selected and on the view: their names, further words they are found by, and why they cannot be used. */

export const undo = "Undo";
export const redo = "Redo";
export const deleteSelected = "Delete";
export const deleteSelectedAlso = "remove";
export const unlockAll = "Unlock all";
export const duplicate = "Duplicate";
export const selectAll = "Select all beds and plantings";
export const selectNone = "Select nothing";
export const selectKind = "Select all of the same kind";
export const selectVariety = "Select all of the same variety";
export const selectBed = "Select all in the same bed";
export const lock = "Lock";
export const lockAlso = "fix hold";
export const unlock = "Unlock";
export const unlockAlso = "free release";
export const menu = "Menu of what is selected";
export const menuAlso = "actions context";
export const nothingToUndo = "There is nothing to undo";
export const nothingToRedo = "There is nothing to redo";
export const lockedAlready = "It is locked already";
export const notLocked = "It is not locked";
export const fitAll = "Fit all into the sheet";
export const fitAllAlso = "zoom everything";
export const showSelection = "Show what is selected on the sheet";
export const showSelectionAlso = "zoom fit selection";
export const regionCommandsAlso = "focus region panel";
export const toTheFindings = "To the findings";
export const toTheParticulars = "To the particulars";
export const toTheSeedList = "To the seed list";
export const toTheBloomStrip = "To the bloom strip";
export const nothingIsSelected = "Nothing is selected";
export const selectTwo = "Select at least two objects";
export const selectOne = "Select one object";
export const isLocked = "It is locked";
export const notNow = (command: string, reason: string) =>
  `${command}: ${reason.charAt(0).toLowerCase()}${reason.slice(1)}.`;
export const partNotLoaded = "This part of the program could not be loaded. Is the network there?";

/** Where commands are listed. */
export const groupNames = {
  edit: "Edit",
  objects: "Objects",
  "line-up": "Line up",
  view: "View",
  tools: "Tools",
  layouts: "Layouts",
  plan: "Plan",
  lists: "Lists and figures",
  help: "Help",
} as const;

/** Titles of steps, and what is said of them. */
export const deleteObjects = (names: string) => `Delete ${names}`;
export const duplicateObjects = (names: string) => `Duplicate ${names}`;
export const lockObjects = (names: string) => `Lock ${names}`;
export const unlockObjects = (names: string) => `Unlock ${names}`;
export const spaceObjects = (names: string) => `Space ${names} evenly`;
export const notSpaced = (problem: string) => `Not spaced: ${problem}.`;
export const selectedCount = (count: number) => `${count} selected.`;

/** Keys. */
export const menuKey = "Menu key";
export const commandKey = "Ctrl or Cmd";
export const shiftKey = "Shift";
