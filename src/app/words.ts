/** Words of the window's frame: regions that cannot be shown, and what is being loaded. */

export const headerNotShown = "The header cannot be shown";
export const seedListNotShown = "The seed list cannot be shown";
export const findingsNotShown = "The findings cannot be shown";
export const particularsNotShown = "The particulars cannot be shown";
export const bloomNotShown = "The bloom strip cannot be shown";
export const sheetNotShown = "The sheet cannot be shown";
export const tablesNotShown = "The tables cannot be shown";
export const lotsNotShown = "The lots cannot be shown";
export const walkNotShown = "The walk cannot be shown";
export const comparisonNotShown = "The compared layouts cannot be shown";
export const loadingTables = "Loading the tables ...";
export const loadingLots = "Loading the lots ...";
export const loadingWalk = "Loading the walk ...";
export const loadingComparison = "Loading the comparison ...";

/** What the start of the program says. */
export const opening = "The plan is still being opened.";
export const blocked = "A tab with an older Wideberth is open. Close it, and the plan opens here.";
export const outdated = "A newer Wideberth is open in another tab. Reload this page to go on.";
export const unreadable = "The saved copies of your last plan cannot be read. Nothing was deleted.";
export const samplePlan = "sample plan";
export const sampleMissing = {
  got: "no answer when fetching it",
  expected: "a plan; a new one stands in its place",
};
/** Ends the sentence "Not saved: ...". */
export const readerMissing =
  "the part of the program that reads plans could not be fetched; load the page anew once the network is there";
