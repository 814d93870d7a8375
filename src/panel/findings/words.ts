/** Words of findings on the screen. */

export const whereSelectedPlantingCould =
  "Where the selected planting could lie without a conflict";
export const clearGround = "Clear ground";
export const findingsCounted = "Findings counted";
export const none = "none";
export const listPressLeaveThem = "In the list; press to leave them out";
export const leftOutList = "Left out of the list";
export const kindOfFinding = "Kind of finding";
export const allKindsOfFindings = "All kinds of findings";
export const noneLeft = "None left";
export const selectedOnly = "Selected only";
export const selectAll = (title: string | number) => `Select all: ${title}`;
export const selectAll2 = "Select all";
export const loading = "Loading ...";
export const waysOut = "Ways out";
export const lookingForWaysOut = "Looking for ways out ...";
export const partFindingsCouldNot =
  "A part of the findings could not be loaded. Is the network there?";
export const findings = "Findings";
export const cleared = (title: string | number) => `Cleared: ${title}`;
export const andMore = (value: string | number) => `And ${value} more.`;
export const showMore = (value: string | number) => `Show ${value} more`;
export const leftOut = (hidden: string | number) => `${hidden} left out. `;
export const showAll = "Show all";
export const noConflict = "No conflict.";
export const noConflictFoundBut = "No conflict found, but not all is known.";
