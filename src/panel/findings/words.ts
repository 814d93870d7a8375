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

/** Commands: their names, further words they are found by, and why they cannot be used. */
export const clearGroundCommand = "Clear ground of the selected planting";
export const clearGroundAlso = "where free place";
export const crossingShade = "Shade by how much would cross";
export const crossingShadeAlso = "estimate outcrossing pollen";
export const nextFinding = "Next finding";
export const nextFindingAlso = "conflict caution unknown warning";
export const previousFinding = "Previous finding";
export const previousFindingAlso = "conflict caution unknown warning";
export const waysOutCommand = "Ways out of the open finding";
export const waysOutAlso = "remedy solve conflict";
export const selectOnePlanting = "Select one planting";
export const selectOneSeedPlanting = "Select one planting kept for seed";
export const noFindings = "There are no findings";
export const noWaysOut = "No open finding has ways out";
