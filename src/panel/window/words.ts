/** Words of window on the screen. */

export const regions = "Regions";
export const conflicts = " conflicts";
export const history = "History";
export const nothingTo = (toLowerCase: string | number) => `Nothing to ${toLowerCase}`;
export const menu = "Menu";
export const partProgramCouldNot =
  "A part of the program could not be fetched: the network may be gone, or the program was renewed on its server. The plan is not touched. Loading the page anew saves the plan first and fetches what is missing.";
export const somethingHereWentWrong = (fault: string | number) =>
  `Something here went wrong (${fault}). The plan itself is not touched: keep a copy of it, then try again or load the page anew.`;
export const downloadThePlan = "Download the plan";
export const tryAgain = "Try again";
export const loadThePageAnew = "Load the page anew";
export const show = "Show";
export const shownOnTheSheet = "Shown on the sheet";
export const theGroundIn = (year: string | number) => `The ground in ${year}. `;
export const backToThisSeason = "Back to this season";
export const kindThingsHidden = "1 kind of things is hidden.";
export const kindsThingsHidden = (count: string | number) => `${count} kinds of things are hidden.`;
export const showAll = "Show all";
export const skip = "Skip";
export const toTheSheet = "To the sheet";
export const toTheTables = "To the tables";
export const toTheFindings = "To the findings";
export const allCommands = (keysText: string | number) => `All commands (${keysText})`;
export const commands = "Commands";
export const view = "View";
export const sheetView = "Sheet";
export const tablesView = "Tables";
export const lotsView = "Lots";
export const compareView = "Compare";
export const walkView = "Walk";
