/** Words of arrange on the screen. */

export const proof = "Proof";
export const addNewLayout = "Add as a new layout";
export const tryAnotherStart = "Try another start";
export const canAnyLayoutDo = "Can any layout do better?";
export const stopTheProof = "Stop the proof";
export const arrangeForMe = (name: string | number) => `Arrange ${name} for me`;
export const movesPlantingsAlongBetween =
  "Moves plantings along and between rectangular beds until none is too close to another, or as few as can be found. Sizes, dates and covers stay as they are, and what is in no trouble is moved as little as possible. The result comes as a new layout.";
export const alsoPlaceSeedList = (join: string | number) =>
  `Also place what the seed list still wants: ${join}`;
export const timeLimitSeconds = "Time limit, seconds";
export const startNumber = "Start number";
export const whereSearchStartsSame =
  "Where the search starts. The same number gives the same answer again";
export const arrange = "Arrange";
export const bestFar = (conflictWords: string | number) => `${conflictWords} in the best so far.`;
export const looking = "Looking ...";
export const timeAndStepsUsed = "Time and steps used";
export const stopBestFar = "Stop with the best so far";
export const cancel = "Cancel";
