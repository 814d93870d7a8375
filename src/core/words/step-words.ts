/** Titles of undo steps, what a step leaves alone, and why one cannot be taken. */
import { counted, formOf } from "./plurals.ts";

export const accept = "Accept a finding";
export const resetAccepted = "Reset an accepted finding";
export const add = (name: string) => `Add ${name}`;
export const addLot = (code: string) => `Add lot ${code}`.trim();
export const addKind = (name: string) => `Add the kind ${name}`;
export const arrangeAs = (name: string) => `Arrange as ${name}`;
export const changeCrop = (year: number) => `Change the earlier crop of ${year}`;
export const changeKind = (name: string) => `Change the kind ${name}`;
export const changePlace = (name: string) => `Change the storage place ${name}`;
export const changeSeason = "Change the season";
export const copyLayout = (name: string) => `Copy layout as ${name}`;
export const stepDelete = "Delete";
export const deleteKind = (name: string) => `Delete the kind ${name}`;
export const deleteLayout = "Delete layout";
export const deletePicture = "Delete the picture";
export const deletePlace = (name: string) => `Delete the storage place ${name}`;
export const drawBed = (code: string) => `Draw bed ${code}`;
export const growOut = (variety: string) => `Grow out ${variety} for fresh seed`;
export const layPicture = (name: string) => `Lay ${name} under the drawing`;
export const mixLots = (count: number, code: string) => `Mix ${count} lots into ${code}`;
export const move = "Move";
export const moveObject = (code: string) => `Move ${code}`;
export const moveInto = (code: string, bed: string) => `Move ${code} to ${bed}`;
export const renameLayout = (name: string) => `Rename layout to ${name}`;
export const resize = "Resize";
export const scalePicture = "Scale the picture";
export const splitLot = (code: string) => `Split ${code} off`;
export const start = (code: string, isSown: boolean, date: string) =>
  isSown ? `Sow ${code} on ${date}` : `Set out ${code} on ${date}`;
export const swap = (code: string, other: string) => `Swap ${code} with ${other}`;
export const turn = "Turn";
export const unlockAll = "Unlock all";
export const correctEntry = (entry: string) => `Correct ${entry}`;
export const strikeEntry = (entry: string) => `Strike out ${entry}`;
export const harvestInto = (lot: string) => `Harvest into lot ${lot}`;
export const putMore = (grams: number, lot: string) => `Put ${grams} g more to lot ${lot}`;
export const takeOwnRange = (variety: string) => `Take the days seen as ${variety}'s own range`;
export const keepSeenDays = (variety: string) => `Keep the days seen of ${variety}`;

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
export const lotsLeft = (count: number) =>
  formOf(count, {
    one: "one lot was stored there; its time there is no longer known",
    other: `${count} lots were stored there; their time there is no longer known`,
  });
export const recordFull = (most: number) => `Not written: a plan holds ${most} entries at most`;
export const recoded = (before: string, after: string) => `${before} is now ${after}`;

/** Why a kind of the grower's own cannot be deleted. */
export const crop = (year: number) => `the earlier crop of ${year}`;
export const mark = (name: string) => `what the mark ${name} harms`;
/** @param users who is of that kind, one or more */
export const stays = (kind: string, users: readonly string[]) => {
  const [first = "", second = ""] = users;
  const one = `${kind} stays while ${first} is of that kind.`;
  const two = `${kind} stays while ${first} and ${second} are of that kind.`;
  const many = `${kind} stays while ${first} and ${users.length - 1} others are of that kind.`;
  const who = formOf(users.length, { one, other: users.length === 2 ? two : many });
  return `${who} Give them another kind or delete them first.`;
};

/** Why objects cannot be spaced evenly. */
export const tooFew = (least: number) =>
  `Needs at least ${counted(least, { one: "object", other: "objects" })}`;
export const spacingLocked = (name: string) => `${name} is locked`;
export const noRoom = "There is not enough room between the outermost two";

/** Why what is on the clipboard cannot be pasted. */
export const empty = "There is no text on the clipboard.";
export const foreign = "What is on the clipboard was not copied from a plan of this program.";
export const tooMuch = "That is too much to paste at once.";
export const notWhole = "The copied text is not whole: copy the objects once more.";
export const newer = "It was copied from a newer version of this program; nothing was pasted.";
export const notSound = "The copied text is not sound.";
export const nothing = "Nothing was copied.";
