/** One growing-out read from the lot that was harvested there. */
import type { Kind } from "../kinds/crop.ts";
import type { Lot } from "../model/plan.ts";
import { breedingOf, countsSeedPlantsAlone, effectiveSize } from "./breeding.ts";
import type { Growing, GrowingSize, HowItCame, IsolationMet, LineLot } from "./line-lot.ts";

/** How a lot came about. A lot split off or mixed carries the facts of its parents, not a harvest of its own. */
export function howItCame({ partOf, from, grownFrom }: Lot, hasParents: boolean): HowItCame {
  if (partOf && partOf.length > 0) return partOf.length > 1 ? "mixed" : "split";
  return hasParents || grownFrom !== undefined || from?.what === "own" ? "grown" : "start";
}

/** The growing-out of a lot that was harvested from plants. */
export function growingOf({ from, isolation }: Lot, kind: Kind | undefined): Growing {
  const isHandPollinated = isolation?.covers?.some(({ cover }) => cover === "hand") === true;
  const numbers = {
    seedPlants: from?.plants ?? null,
    pollenPlants: from?.pollenPlants ?? null,
    isEqualSeed: from?.equalSeed === true,
    isHandPollinated,
  };
  return {
    plot: from?.plot ?? null,
    season: from?.season ?? null,
    ...numbers,
    size: sizeOf(numbers, kind),
  };
}

/**
 * Nothing is filled in that was not counted. Plants that gave seed have flowered as well, so where
 * the pollen plants were not counted they are at least as many: unless somebody carried the pollen
 * from plants of their choice, or females and males stand apart.
 */
export function sizeOf(
  numbers: Pick<Growing, "seedPlants" | "pollenPlants" | "isEqualSeed" | "isHandPollinated">,
  kind: Pick<Kind, "id" | "breeding"> | undefined,
): GrowingSize {
  const { seedPlants, pollenPlants, isEqualSeed, isHandPollinated } = numbers;
  if (!kind) return { effective: null, why: "no kind" };
  if (seedPlants === null || seedPlants < 1) return { effective: null, why: "no seed plants" };
  const breeding = breedingOf(kind);
  const isCounted = pollenPlants !== null || countsSeedPlantsAlone(breeding);
  if (!isCounted && breeding.sexes === "one") return { effective: null, why: "no males" };
  if (!isCounted && isHandPollinated) return { effective: null, why: "no pollen plants" };
  const effective = effectiveSize(breeding, {
    seedPlants,
    pollenPlants: pollenPlants ?? seedPlants,
    isEqualSeed,
  });
  return effective === null
    ? { effective: null, why: "no pollen plants" }
    : { effective, isAtLeast: !isCounted };
}

/**
 * As planned every plant gives seed and pollen: how it went is written on the lot that is
 * harvested. Of kinds with females and males half of each are reckoned with. Flowers pollinated by
 * hand take pollen of plants of the grower's choice: that cannot be told beforehand.
 * @param plants of all plantings together; null: not counted
 */
export function plannedSize(
  plants: number | null,
  isHandPollinated: boolean,
  kind: Pick<Kind, "id" | "breeding">,
): GrowingSize {
  const isSplit = breedingOf(kind).sexes === "one";
  const half = plants === null ? null : Math.floor(plants / 2);
  const seedPlants = isSplit ? half : plants;
  const others = plants === null || half === null ? null : isSplit ? plants - half : plants;
  const pollenPlants = isHandPollinated ? null : others;
  return sizeOf({ seedPlants, pollenPlants, isEqualSeed: false, isHandPollinated }, kind);
}

/** By the record that was frozen at harvest, unless it is said that the seed may have crossed. */
export function isolationMet({ isolation, mayHaveCrossed: said }: Lot): IsolationMet {
  if (said === true) return "not met";
  switch (isolation?.standing) {
    case undefined:
      return "not recorded";
    case "conflict":
      return "not met";
    case "unknown":
      return "not told";
    default:
      return "met";
  }
}

/**
 * Whether a lot's record of isolation tells of its own growing. A part or a mixture was not grown
 * itself: what its record says was said of its parents, unless they are no longer there.
 */
export function hasOwnRecord({ how, parents }: Pick<LineLot, "how" | "parents">): boolean {
  return how === "grown" || parents.length === 0;
}
