/** What a range of shares means for the plants grown next year and for the line after some seasons. */
import type { Shares } from "./distance-bins.ts";
import { foreignInLine, offTypesAmong, plantsToSeeOne } from "./off-types.ts";
import { percentRange, twoFigures } from "./share-words.ts";
import { counted } from "../words/plurals.ts";

/** Plants reckoned with where the plan says no number. */
export const PLANTS_UNSAID = 100;
/** Fewer crossed plants than this on average are not told apart. */
const LEAST_COUNT = 0.01;
/** More plants than this to see one are not told apart. */
const MOST_PLANTS = 100_000;

/** Crossed plants among so many grown from the seed, with the interval of chance. */
export function offTypeWords(plants: number, shares: Shares): string {
  const { expected, within } = offTypesAmong(plants, shares);
  const [least, most] = expected.map((count) => (count < LEAST_COUNT ? null : twoFigures(count)));
  const mean =
    most === null || most === undefined
      ? "far fewer than one crossed"
      : least === most
        ? `about ${most} crossed`
        : `${least ? `about ${least}` : "up"} to ${most} crossed`;
  const [few, many] = within.map((count) => count.toLocaleString("en"));
  const chance =
    within[1] === 0 ? "none at all" : few === many ? `${many}` : `between ${few} and ${many}`;
  return `Among ${plants.toLocaleString("en")} plants grown from this seed: ${mean}; in 95 seasons of 100 ${chance}.`;
}

/** How many plants show one crossed plant. */
export function seeOneWords([low, high]: Shares): string {
  const plants = (share: number) => {
    const count = plantsToSeeOne(share);
    return count === null || count > MOST_PLANTS
      ? `more than ${MOST_PLANTS.toLocaleString("en")}`
      : twoFigures(count);
  };
  const [few, many] = [plants(high), plants(low)];
  return `To see one crossed plant, 95 times in 100, grow ${few === many ? few : `${few} to ${many}`} plants. A cross may not show before the next generation.`;
}

/**
 * Foreign blood in the line at this share in every season.
 * @param rogued share of crossed plants that are seen and taken out before they flower, 0 to 1
 */
export function lineWords(shares: Shares, seasons: number, rogued: number): string {
  const after = (taken: number): Shares => [
    foreignInLine(shares[0], seasons, taken),
    foreignInLine(shares[1], seasons, taken),
  ];
  const plain = percentRange(after(0));
  const share = twoFigures(100 * rogued);
  return `After ${counted(seasons, { one: "season", other: "seasons" })} at this share the line holds ${plain} of foreign blood; with ${share} in 100 crossed plants rogued before they flower, ${rogued >= 1 ? "none" : percentRange(after(rogued))}.`;
}
