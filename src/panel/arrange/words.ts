/** Words of arrange on the screen. */

export const proof = "Proof";
export const addAsNewLayout = "Add as a new layout";
export const tryAnotherStart = "Try another start";
export const canAnyDoBetter = "Can any layout do better?";
export const stopTheProof = "Stop the proof";
export const arrangeForMe = (name: string) => `Arrange ${name} for me`;
export const arrangeHint =
  "Moves plantings along and between rectangular beds until none is too close to another, or as few as can be found. Sizes, dates and covers stay as they are, and what is in no trouble is moved as little as possible. The result comes as a new layout.";
export const alsoPlace = (wanted: string) => `Also place what the seed list still wants: ${wanted}`;
export const timeLimitSeconds = "Time limit, seconds";
export const startNumber = "Start number";
export const startNumberHint =
  "Where the search starts. The same number gives the same answer again";
export const arrange = "Arrange";
export const bestSoFar = (conflicts: string) => `${conflicts} in the best so far.`;
export const looking = "Looking ...";
export const timeAndStepsUsed = "Time and steps used";
export const stopWithBest = "Stop with the best so far";
export const cancel = "Cancel";
export const lookingForProof = "Looking for a proof ...";
export const layoutIsShown = (layout: string, conflicts: string) =>
  `${layout} is on the sheet. ${conflicts}.`;
