/**
 * Roots, bulbs and heads of biennials in store over the winter: at what, and how long by published
 * limits. The limits are for food; nobody was found who prints them for seed roots.
 */
import type { Range } from "../kinds/crop.ts";

interface StoreLimit {
  /** The longest it keeps, weeks. */
  readonly weeks: Range;
  readonly source: string;
}

export interface RootStore {
  /** As printed: `0 °C, 90 to 95 % humidity`. */
  readonly air: string;
  readonly limits: readonly StoreLimit[];
  readonly note?: string;
}

const HANDBOOK = "USDA Handbook 66, 1954, as copied by others";
const UMASS = "UMass Extension";
const COOL_DAMP = "0 °C, 90 to 95 % humidity";

/** A handbook's weeks, and an extension service's months turned into weeks. */
function limits(handbook: Range, months?: Range): readonly StoreLimit[] {
  const inWeeks = (month: number) => Math.floor((month * 365.25) / 12 / 7);
  return [
    { weeks: handbook, source: HANDBOOK },
    ...(months
      ? [{ weeks: [inWeeks(months[0]), inWeeks(months[1])] as const, source: UMASS }]
      : []),
  ];
}

const stores: ReadonlyMap<string, RootStore> = new Map(
  Object.entries<RootStore>({
    beet: { air: COOL_DAMP, limits: limits([7, 8], [4, 6]) },
    carrot: { air: COOL_DAMP, limits: limits([16, 20]) },
    parsnip: { air: COOL_DAMP, limits: limits([24, 26]) },
    turnip: { air: COOL_DAMP, limits: limits([16, 22], [4, 5]) },
    rutabaga: { air: COOL_DAMP, limits: limits([8, 16], [4, 5]) },
    "winter-radish": { air: COOL_DAMP, limits: limits([8, 16], [2, 4]) },
    kohlrabi: { air: COOL_DAMP, limits: limits([4, 8]) },
    cabbage: {
      air: "0 °C, 90 to 100 % humidity",
      limits: limits([12, 16], [4, 6]),
      note: "heads freeze at -1.1 °C; with roots in sand or sawdust",
    },
    onion: {
      air: "0 °C, 60 to 75 % humidity",
      limits: [{ weeks: [28, 28], source: HANDBOOK }],
      note: "bulbs flower after 90 to 120 days at 5 to 13 °C; 25 to 35 °C keeps them and readies none",
    },
  }),
);

export function rootStoreOf(kindId: string): RootStore | null {
  return stores.get(kindId) ?? null;
}

/** `within` what every source allows; `longer` than some; `longest` of all is passed. */
export type StoreVerdict = "within" | "longer" | "longest";

export function storeVerdict({ limits: all }: RootStore, weeks: number): StoreVerdict {
  if (weeks <= Math.min(...all.map((limit) => limit.weeks[0]))) return "within";
  return weeks <= Math.max(...all.map((limit) => limit.weeks[1])) ? "longer" : "longest";
}

/** `16 to 20 weeks (USDA Handbook 66 ...)`, each source with its own. */
export function limitWords({ limits: all }: RootStore): string {
  return all
    .map(({ weeks: [least, most], source }) => {
      const weeks = least === most ? `${least} weeks` : `${least} to ${most} weeks`;
      return `${weeks} (${source})`;
    })
    .join(", ");
}

interface Hardiness {
  readonly coldC: Range;
  readonly source: string;
}

/** First-year plants that may stand out: the cold they take for long, C, by species. */
const HARDY: ReadonlyMap<string, Hardiness> = new Map(
  Object.entries<Hardiness>({
    "Brassica oleracea": {
      coldC: [-14, -12],
      source: "Nieuwhof 1969, printed for cabbage: red the least hardy, savoy the hardiest",
    },
  }),
);

/** Cold that overwintering plants of a species take; null: nobody printed it. */
export function winterHardiness(species: string): Hardiness | null {
  return HARDY.get(species) ?? null;
}
