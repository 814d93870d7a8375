/** Titles of undo steps, what a step leaves alone, and why one cannot be taken. */
import { counted, formOf } from "./plurals.ts";

export const stepWords = {
  accept: "Accept a finding",
  resetAccepted: "Reset an accepted finding",
  add: (name: string) => `Add ${name}`,
  addLot: (code: string) => `Add lot ${code}`.trim(),
  addKind: (name: string) => `Add the kind ${name}`,
  arrangeAs: (name: string) => `Arrange as ${name}`,
  changeCrop: (year: number) => `Change the earlier crop of ${year}`,
  changeKind: (name: string) => `Change the kind ${name}`,
  changePlace: (name: string) => `Change the storage place ${name}`,
  changeSeason: "Change the season",
  copyLayout: (name: string) => `Copy layout as ${name}`,
  delete: "Delete",
  deleteKind: (name: string) => `Delete the kind ${name}`,
  deleteLayout: "Delete layout",
  deletePicture: "Delete the picture",
  deletePlace: (name: string) => `Delete the storage place ${name}`,
  drawBed: (code: string) => `Draw bed ${code}`,
  growOut: (variety: string) => `Grow out ${variety} for fresh seed`,
  layPicture: (name: string) => `Lay ${name} under the drawing`,
  mixLots: (count: number, code: string) => `Mix ${count} lots into ${code}`,
  move: "Move",
  moveObject: (code: string) => `Move ${code}`,
  moveInto: (code: string, bed: string) => `Move ${code} to ${bed}`,
  renameLayout: (name: string) => `Rename layout to ${name}`,
  resize: "Resize",
  scalePicture: "Scale the picture",
  splitLot: (code: string) => `Split ${code} off`,
  start: (code: string, isSown: boolean, date: string) =>
    isSown ? `Sow ${code} on ${date}` : `Set out ${code} on ${date}`,
  swap: (code: string, other: string) => `Swap ${code} with ${other}`,
  turn: "Turn",
  unlockAll: "Unlock all",
} as const;

/** Names that the program gives. */
export const givenNames = {
  layout: (number: number) => `Layout ${number}`,
  copied: (name: string) => `${name} (copied)`,
  copiedAgain: (name: string, number: number) => `${name} (copied ${number})`,
  unnamed: "an unnamed object",
} as const;

/** What a step leaves as it is. */
export const keptWords = {
  bedWith: (bed: string, planting: string) => `${bed} with ${planting}`,
  more: (count: number) => `${count} more`,
  locked: (count: number, names: string) =>
    formOf(count, {
      one: `${names} is locked and stays as it is`,
      other: `${names} are locked and stay as they are`,
    }),
  countsAs: (label: string, kind: string) =>
    `${label} counts as ${kind} until its particulars say what flowers there`,
  lotsLeft: (count: number) =>
    formOf(count, {
      one: "one lot was stored there; its time there is no longer known",
      other: `${count} lots were stored there; their time there is no longer known`,
    }),
  recoded: (before: string, after: string) => `${before} is now ${after}`,
} as const;

/** Why a kind of the grower's own cannot be deleted. */
export const kindInUse = {
  crop: (year: number) => `the earlier crop of ${year}`,
  mark: (name: string) => `what the mark ${name} harms`,
  /** @param users who is of that kind, one or more */
  stays: (kind: string, users: readonly string[]) => {
    const [first = "", second = ""] = users;
    const one = `${kind} stays while ${first} is of that kind.`;
    const two = `${kind} stays while ${first} and ${second} are of that kind.`;
    const many = `${kind} stays while ${first} and ${users.length - 1} others are of that kind.`;
    const who = formOf(users.length, { one, other: users.length === 2 ? two : many });
    return `${who} Give them another kind or delete them first.`;
  },
} as const;

/** Why objects cannot be spaced evenly. */
export const spacingWords = {
  tooFew: (least: number) =>
    `Needs at least ${counted(least, { one: "object", other: "objects" })}`,
  locked: (name: string) => `${name} is locked`,
  noRoom: "There is not enough room between the outermost two",
} as const;

/** Why what is on the clipboard cannot be pasted. */
export const clipWords = {
  empty: "There is no text on the clipboard.",
  foreign: "What is on the clipboard was not copied from a plan of this program.",
  tooMuch: "That is too much to paste at once.",
  notWhole: "The copied text is not whole: copy the objects once more.",
  newer: "It was copied from a newer version of this program; nothing was pasted.",
  notSound: "The copied text is not sound.",
  nothing: "Nothing was copied.",
} as const;
