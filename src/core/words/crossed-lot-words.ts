/** What is said of seed that may have crossed while it grew, and of what is sown from it. */
import { formOf, listOf } from "./plurals.ts";

/** On the shelf, on packets and on reports. */
export const mayHaveCrossed = "may have crossed";
export const packetWarning = "May have crossed";

export const title = (planting: string) => `${planting} is sown from seed that may have crossed`;
export const nearWhat = (name: string, because: string) =>
  because === "" ? name : `${name} (${because})`;
/** @param because how near what stood, as it was frozen at harvest */
export const notKeptApart = (lot: string, because: string) =>
  `Lot ${lot} was not kept apart while it grew: ${because}.`;
export const markedSo = (lot: string) => `Lot ${lot} is marked as seed that may have crossed.`;
export const comesFrom = (lot: string, forebears: readonly string[]) =>
  `Lot ${lot} comes from ${listOf(forebears)}, which ${formOf(forebears.length, { one: "was", other: "were" })} not kept apart.`;
export const rogue =
  "Look for off-types and take them out before they flower: what is left of them goes on into the new seed.";
export const orSow = (lots: readonly string[]) =>
  `Or sow ${listOf(lots)}, of which nothing such is known.`;
export const beside = (others: string, planting: string) =>
  `${others} of the same variety stands from other seed, and between plantings of one variety no distance is asked: mark ${planting} as keep apart, and it is.`;
export const foundTrue =
  "If the plants have been looked through and are true, say so of the lot under Crossing.";
