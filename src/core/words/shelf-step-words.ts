/**
 * Titles of undo steps of the shelf, own kinds, the record and the season, what such a step leaves
 * alone, and why one cannot be taken: apart from step-words.ts, as their parts are loaded later.
 */
import { counted, formOf } from "./plurals.ts";

export const addLot = (code: string) => `Add lot ${code}`.trim();
export const addKind = (name: string) => `Add the kind ${name}`;
export const arrangeAs = (name: string) => `Arrange as ${name}`;
export const changeCrop = (year: number) => `Change the earlier crop of ${year}`;
export const changeKind = (name: string) => `Change the kind ${name}`;
export const changePlace = (name: string) => `Change the storage place ${name}`;
export const changeSeason = "Change the season";
export const deleteKind = (name: string) => `Delete the kind ${name}`;
export const deletePlace = (name: string) => `Delete the storage place ${name}`;
export const growOut = (variety: string) => `Grow out ${variety} for fresh seed`;
export const mixLots = (count: number, code: string) => `Mix ${count} lots into ${code}`;
export const splitLot = (code: string) => `Split ${code} off`;
export const correctEntry = (entry: string) => `Correct ${entry}`;
export const strikeEntry = (entry: string) => `Strike out ${entry}`;
export const harvestInto = (lot: string) => `Harvest into lot ${lot}`;
export const putMore = (grams: number, lot: string) => `Put ${grams} g more to lot ${lot}`;
export const takeOwnRange = (variety: string) => `Take the days seen as ${variety}'s own range`;
export const keepSeenDays = (variety: string) => `Keep the days seen of ${variety}`;

export const lotsLeft = (count: number) =>
  formOf(count, {
    one: "one lot was stored there; its time there is no longer known",
    other: `${count} lots were stored there; their time there is no longer known`,
  });
export const recordFull = (most: number) => `Not written: a plan holds ${most} entries at most`;
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
