/** Words of keeping on the screen. */

export const planOpenEditingAnother =
  "This plan is open for editing in another tab. Here it can be looked at.";
export const takeOverEditing = "Take over editing";
export const notSaved = (reason: string | number) => `Not saved: ${reason}`;
export const saveAFile = "Save a file";
export const fileNotOpenedPlan = "The file was not opened; the plan on screen is as it was.";
export const andMorePlaces = (value: string | number) => `And ${value} more places.`;
export const close = "Close";
export const lookOnly = "Look only";
export const changedDaysAgoNo = (days: string | number) =>
  `Changed ${days} days ago and in no file since: the browser's storage is no archive`;
export const noFileForDays = (days: string | number) => `No file for ${days} days`;
export const newerWideberthReadyPlan =
  "A newer Wideberth is ready. The plan is saved first, then the page is loaded anew.";
export const loadItNow = "Load it now";
export const later = "Later";
export const opening = "Opening ...";
export const saving = "Saving ...";
export const savedAt = (time: string) => `Saved ${time}`;
export const notSavedYet = "Not saved yet";
export const notSavedAtAll = "Not saved";
