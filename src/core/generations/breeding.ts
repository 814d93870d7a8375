/** How a kind breeds, as far as effective population asks: sexes, and how much of its seed is selfed. */
import type { Kind } from "../kinds/crop.ts";
import {
  type ParentNumbers,
  partlySelfed,
  plantsOfBothSexes,
  plantsOfOneSex,
} from "./effective-size.ts";

/** Kinds with females and males on plants of their own. General botany. */
const ONE_SEX: ReadonlySet<string> = new Set(["spinach", "asparagus"]);

/** Share of the seed that is selfed, where it was published for the kind. */
const PUBLISHED: ReadonlyMap<string, { readonly share: number; readonly source: string }> = new Map(
  Object.entries<{ readonly share: number; readonly source: string }>({
    "broad-bean": {
      share: 0.65,
      source: "35 % outcrossed on average, 8 to 84 (Street 2008, after Bond and Poulsen 1983)",
    },
    cowpea: { share: 0.98, source: "up to 2 % outcrossed (Dumet 2008)" },
  }),
);

/** By breeding system where nobody gives a share. Ours, and on the careful side. */
const BY_SYSTEM = { outcrossing: 0, "mostly selfing": 0.9, selfing: 1 } as const;

export interface Breeding {
  readonly sexes: "both" | "one";
  /** Part of the seed that a plant makes with its own pollen beyond chance, 0 to 1. */
  readonly selfed: number;
  /** Who says so; null: our reading of the breeding system. */
  readonly source: string | null;
}

export function breedingOf(kind: Pick<Kind, "id" | "breeding">): Breeding {
  const published = PUBLISHED.get(kind.id);
  return {
    sexes: ONE_SEX.has(kind.id) ? "one" : "both",
    selfed: published?.share ?? BY_SYSTEM[kind.breeding],
    source: published?.source ?? null,
  };
}

/** Where half of the seed or more is selfed the seed plants alone count: strange pollen is rare. */
const MOSTLY = 0.5;

export function countsSeedPlantsAlone({ selfed }: Breeding): boolean {
  return selfed >= MOSTLY;
}

/**
 * Effective population of one growing-out; null where a number it needs is nought.
 * @param numbers pollen plants are not asked for where the seed plants alone count
 */
export function effectiveSize(breeding: Breeding, numbers: ParentNumbers): number | null {
  const { seedPlants, pollenPlants } = numbers;
  if (seedPlants < 1) return null;
  if (countsSeedPlantsAlone(breeding)) return partlySelfed(seedPlants, breeding.selfed);
  if (pollenPlants < 1) return null;
  const size = breeding.sexes === "one" ? plantsOfOneSex(numbers) : plantsOfBothSexes(numbers);
  return partlySelfed(size, breeding.selfed);
}
