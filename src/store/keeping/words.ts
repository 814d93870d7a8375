/** Words of saving in the browser and of plans open in several tabs. */

/** Why a plan is not saved, as the end of "Not saved: ...". */
export const storageFull = "the browser's storage is full; save the plan to a file";
export const storageRefused =
  "this browser lets the page store nothing (a private window, or storage is switched off); save the plan to a file";
export const newerElsewhere = "a newer Wideberth has been opened in this browser; reload this page";
export const storageSilent = "the browser's storage does not answer; save the plan to a file";
export const connectionLost =
  "the connection to the browser's storage is lost; save the plan to a file, then reload";
export const storeRefused = "the browser refused to store it; save the plan to a file";
export const contentLost =
  "the plan lost most of its content without an edit; reload this page to get the last good copy";
export const planHasFault = (fault: string) =>
  `the plan has a fault (${fault}); undo the last change, the copy before is kept`;
export const plansDeleted =
  "the plans stored in this browser were deleted from outside; this one is whole here, save it to a file";
export const notSaved = (reason: string) => `Not saved: ${reason}`;
export const storedAgain =
  "This browser had deleted its stored plans. This plan is stored again, with no earlier copies; others are gone. Save it to a file.";
export const notStorable = "it holds something a plan file cannot hold";
export const wouldNotOpen = "it would not open again";

/** Another plan, another tab, another version of the program. */
export const copyOfTime = (time: string) => `copy of ${time}`;
export const copy = "copy";
export const loseWork =
  "The open plan has changes that could not be saved. Open the other plan and lose them?";
export const newestDamaged = (title: string, at: string) =>
  `The newest saved copy of "${title}" is damaged. The one from ${at} has been opened; the damaged one is kept.`;
export const openElsewhere = (title: string) =>
  `"${title}" is open in another tab. It has been opened here as a plan of its own.`;
export const openedApart = (title: string) =>
  `"${title}" has been opened as a plan of its own; both are kept.`;
export const openedOver = (title: string, at: string) =>
  `"${title}" has been opened. The version saved here at ${at} is kept among its earlier copies.`;
export const changedInOtherTab = "Changed in another tab";
export const goOnInOtherFile = "Go on in another file";
export const lookOnly =
  "This plan is open in another tab. Here you can look at it, or take over and edit it here.";
export const changedInBoth = (title: string, copyTitle: string) =>
  `"${title}" was changed in another tab too. Both versions are kept; this one is now "${copyTitle}".`;
export const takenOver = (copyTitle: string) =>
  `Another tab took this plan over. Your last changes are kept as "${copyTitle}".`;
export const unsavedBeforeUpdate =
  "The plan has changes that could not be saved. Save a file first; then load the new version.";
export const notKeptOffline = (fault: string) =>
  `The program is not kept for working offline: ${fault}`;
export const updateIncomplete = "A new version could not be fetched whole.";
export const lastChanges = "Last changes before the page was left";
export const refused = (rule: string, address: string) => `${rule} refused ${address}`;
