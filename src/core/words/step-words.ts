/** Titles of undo steps, what a step leaves alone, and why one cannot be taken. */
import { formOf } from "./plurals.ts";

export const accept = "Accept a finding";
export const resetAccepted = "Reset an accepted finding";
export const add = (name: string) => `Add ${name}`;
export const copyLayout = (name: string) => `Copy layout as ${name}`;
export const stepDelete = "Delete";
export const deleteLayout = "Delete layout";
export const deletePicture = "Delete the picture";
export const drawBed = (code: string) => `Draw bed ${code}`;
export const layPicture = (name: string) => `Lay ${name} under the drawing`;
export const move = "Move";
export const moveObject = (code: string) => `Move ${code}`;
export const moveInto = (code: string, bed: string) => `Move ${code} to ${bed}`;
export const renameLayout = (name: string) => `Rename layout to ${name}`;
export const resize = "Resize";
export const scalePicture = "Scale the picture";
export const start = (code: string, isSown: boolean, date: string) =>
  isSown ? `Sow ${code} on ${date}` : `Set out ${code} on ${date}`;
export const swap = (code: string, other: string) => `Swap ${code} with ${other}`;
export const turn = "Turn";
export const unlockAll = "Unlock all";
/** Names that the program gives. */
export const layout = (number: number) => `Layout ${number}`;
export const copied = (name: string) => `${name} (copied)`;
export const copiedAgain = (name: string, number: number) => `${name} (copied ${number})`;
export const unnamed = "an unnamed object";

/** What a step leaves as it is. */
export const bedWith = (bed: string, planting: string) => `${bed} with ${planting}`;
export const more = (count: number) => `${count} more`;
export const keptLocked = (count: number, names: string) =>
  formOf(count, {
    one: `${names} is locked and stays as it is`,
    other: `${names} are locked and stay as they are`,
  });
export const countsAs = (label: string, kind: string) =>
  `${label} counts as ${kind} until its particulars say what flowers there`;
export const recoded = (before: string, after: string) => `${before} is now ${after}`;

/** Why what is on the clipboard cannot be pasted. */
export const empty = "There is no text on the clipboard.";
export const foreign = "What is on the clipboard was not copied from a plan of this program.";
export const tooMuch = "That is too much to paste at once.";
export const notWhole = "The copied text is not whole: copy the objects once more.";
export const newer = "It was copied from a newer version of this program; nothing was pasted.";
export const notSound = "The copied text is not sound.";
export const nothing = "Nothing was copied.";
