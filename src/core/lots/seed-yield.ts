/** Seed to expect of a number of plants, and plants for the seed wanted. */
import type { Kind, Sourced } from "../kinds/crop.ts";
import type { Lot, SeedAmount } from "../model/plan.ts";
import { formOf } from "../words/plurals.ts";

/** Clean seed of one plant, grams, and where the figure is from. */
export interface SeedYield {
  /** [least, most]. */
  readonly gramsPerPlant: readonly [number, number];
  readonly basis: "own" | "published" | "from memory";
  /** Who published it, or how many own harvests it is made of. */
  readonly source: string;
}

interface YieldRow {
  readonly kinds: readonly string[];
  /** Grams of clean seed, [least, most], for each square metre or each plant. */
  readonly grams: readonly [number, number];
  readonly per: "m2" | "plant";
  readonly basis: "published" | "from memory";
  readonly source: string;
}

const FROM_MEMORY = "textbooks of vegetable seed production, from memory; order of magnitude only";

function seen(
  kinds: readonly string[],
  per: YieldRow["per"],
  grams: readonly [number, number],
  source: string,
): YieldRow {
  return { kinds, grams, per, basis: "published", source };
}

function recalled(kinds: readonly string[], least: number, most: number): YieldRow {
  return { kinds, grams: [least, most], per: "m2", basis: "from memory", source: FROM_MEMORY };
}

/** Published rows first: they go before recalled ones. */
const ROWS: readonly YieldRow[] = [
  seen(["onion"], "plant", [5, 6], "seed certification pages, Tamil Nadu Agricultural University"),
  seen(
    ["pepper"],
    "m2",
    [10.5, 22.5],
    "e-course on capsicum, Indian Council of Agricultural Research",
  ),
  seen(["okra"], "m2", [112, 168], "McGregor, Agriculture Handbook 496, USDA 1976, second hand"),
  recalled(["common-bean"], 80, 200),
  recalled(["pea"], 120, 250),
  recalled(["broad-bean"], 120, 250),
  recalled(["cowpea"], 60, 150),
  recalled(["lettuce"], 30, 80),
  recalled(["spinach"], 70, 150),
  recalled(["beet", "chard"], 100, 200),
  recalled(["carrot"], 40, 100),
  recalled(["parsnip"], 50, 100),
  recalled(["parsley"], 50, 100),
  recalled(["leek"], 30, 60),
  recalled(["cabbage", "kale", "broccoli"], 40, 90),
  recalled(["radish"], 60, 150),
  recalled(["turnip", "pak-choi", "mizuna", "broccoli-raab", "mustard-spinach"], 60, 150),
  recalled(["tomato"], 8, 20),
  recalled(["hot-pepper"], 10, 25),
  recalled(["eggplant"], 15, 40),
  recalled(["cucumber"], 20, 50),
  recalled(["melon"], 15, 40),
  recalled(["watermelon"], 15, 40),
  recalled(["summer-squash", "winter-squash", "butternut", "pumpkin"], 30, 60),
  recalled(["maize", "sweet-corn", "popcorn"], 150, 300),
];

/** A single own harvest stands for a third less to a third more. No source; our choice. */
const ONE_HARVEST_DOUBT = 1 / 3;

/**
 * Grams of clean seed of one plant: from the grower's own harvests of the variety where there are
 * any, else published, else recalled; null where nobody says.
 * @param lots of the variety
 */
export function seedYield(
  kind: Pick<Kind, "id" | "spacing">,
  lots: readonly Lot[],
): SeedYield | null {
  const own = lots.flatMap(({ from }) =>
    from?.what === "own" && from.plants && from.cleanedGrams ? from.cleanedGrams / from.plants : [],
  );
  if (own.length > 0) {
    const [least, most] = [Math.min(...own), Math.max(...own)];
    const doubt = own.length === 1 ? ONE_HARVEST_DOUBT : 0;
    return {
      gramsPerPlant: [least * (1 - doubt), most * (1 + doubt)],
      basis: "own",
      source: formOf(own.length, { one: "one own harvest", other: `${own.length} own harvests` }),
    };
  }
  const row = ROWS.find(({ kinds }) => kinds.includes(kind.id));
  if (!row) return null;
  const ground = row.per === "plant" ? 1 : groundOf(kind.spacing);
  if (ground === null) return null;
  const [least, most] = row.grams;
  return {
    gramsPerPlant: [least * ground, most * ground],
    basis: row.basis,
    source: row.source,
  };
}

/** Ground of one plant at the kind's spacing, square metres. */
function groundOf(
  spacing: { readonly inRowM: Sourced<number>; readonly betweenRowsM: Sourced<number> } | undefined,
): number | null {
  return spacing ? spacing.inRowM.value * spacing.betweenRowsM.value : null;
}

/**
 * Plants for the seed wanted, reckoned with the least yield, never fewer than keep the variety.
 * @param grams clean seed wanted; 0: only the population counts
 */
export function plantsForSeed(
  grams: number,
  gramsPerPlant: number,
  kind: Pick<Kind, "population">,
): number {
  return Math.max(Math.ceil(grams / gramsPerPlant - 1e-9), populationFloor(kind) ?? 1);
}

/** Plants that keep a variety of the kind true; undefined: nobody says. */
export function populationFloor({ population }: Pick<Kind, "population">): number | undefined {
  return population?.maintenance?.value ?? population?.viable?.value;
}

/** Seeds of one gram: the lot's own count, else the kind's; undefined: not known. */
export function seedsPerGram(
  lot: Pick<Lot, "seedsPerGram"> | null,
  kind: Pick<Kind, "seedsPerGram"> | undefined,
): number | undefined {
  return lot?.seedsPerGram ?? kind?.seedsPerGram?.value;
}

/** An amount in seeds; undefined where it is weighed and no count is known. */
export function inSeeds(
  amount: SeedAmount | undefined,
  perGram: number | undefined,
): number | undefined {
  if (!amount) return undefined;
  if (amount.unit === "seeds") return amount.value;
  return perGram === undefined ? undefined : Math.round(amount.value * perGram);
}

/** An amount in grams; undefined where it is counted and no weight is known. */
export function inGrams(
  amount: SeedAmount | undefined,
  perGram: number | undefined,
): number | undefined {
  if (!amount) return undefined;
  if (amount.unit === "g") return amount.value;
  return perGram === undefined ? undefined : amount.value / perGram;
}
