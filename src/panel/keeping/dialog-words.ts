/** Words of the parts of keeping that are fetched when they are opened. */

export const whatWentWrong = "What went wrong";
export const noticesFaultsProgramBrowser =
  "Notices and faults of this program in this browser, the newest last. They are kept on this device only and sent nowhere; names from your plans may occur in them.";
export const nothingBeenWrittenDown =
  "Nothing has gone wrong. Should something do, come back here: this list helps to tell of it.";
export const entries = "Entries";
export const copy = "Copy";
export const saveAsAFile = "Save as a file";
export const clear = "Clear";
export const copiesOfNewestFirst = (title: string | number) => `Copies of ${title}, newest first`;
export const asOpened = " (as opened)";
export const openCopyNumber = (revision: string | number) => `Open as a copy: number ${revision}`;
export const openAsACopy = "Open as a copy";
export const saveFileNumber = (revision: string | number) => `Save as a file: number ${revision}`;
export const keptPlans = "Kept plans";
export const browserKeepsPlansYou =
  "This browser keeps the plans you worked on, with earlier copies of each. It is a workbench, not an archive: what is cleared in the browser is gone. Keep what matters as a file.";
export const theKeptPlans = (fault: string | number) => `The kept plans: ${fault}.`;
export const noPlanKeptHere =
  "No plan is kept here yet. Begin one or open a file: it is kept from its first change on.";
export const savedHere = (timeOf: string | number) => `Saved here ${timeOf}. `;
export const noFileYet = "No file yet.";
export const lastFile = (timeOf: string | number) => `Last file ${timeOf}.`;
export const saveFile = "Save file";
export const open = "Open";
export const earlierCopiesOf = (title: string | number) => `Earlier copies of ${title}`;
export const earlierCopies = "Earlier copies";
export const copied = "Copied.";
export const copyByHand =
  "The browser does not let the page copy; mark the lines and copy them by hand.";
export const copiesUnreadable = (reason: string) => `The copies cannot be read: ${reason}.`;
export const copyDamaged = (copyNumber: number) =>
  `Copy ${copyNumber} is damaged. Save it as a file to keep what is left of it.`;
export const copyGone = (copyNumber: number) => `Copy ${copyNumber} is gone.`;
/** What the browser keeps from a page that came over plain http from another device. */
export const plainHttp =
  "This page came over plain http, so the program itself is not kept on this device: without a network it does not open again. The plans are kept under this very address; save them to files before it changes.";
export const noCopyReadable = "no copy of that plan can be read; try an earlier one below";
