/**
 * Cold that biennials need before they flower, in days within a band of temperature, where it was
 * published so. Carrot and onion have functions of their own (vernalization.ts). Of parsnip,
 * parsley, chicory and celery no number of weeks was found.
 */
import type { Range } from "../kinds/crop.ts";

export interface ColdNeed {
  /** Mean of a day that works, C. */
  readonly bandC: Range;
  /** Days of it: the fewest that were enough, and those that surely are. */
  readonly days: Range;
  /** Warmth that undoes it, C; null: nothing is said of that. */
  readonly undoneFromC: number | null;
  /** What was published, and where. */
  readonly source: string;
}

const cole: ColdNeed = {
  bandC: [0, 12],
  days: [42, 56],
  undoneFromC: 16,
  source:
    "4 to 7 °C for 6 to 8 weeks, printed for cabbage and its kin (OECD 2016); by an older study 0 to 12 °C works and warmth above 16 °C undoes it",
};

const beet: ColdNeed = {
  bandC: [0, 8],
  days: [28, 28],
  undoneFromC: null,
  source:
    "4 weeks at 4 °C were enough, given to seed of red beet (Goodger 2013); that 0 to 8 °C counts as such is ours",
};

const needs: ReadonlyMap<string, ColdNeed> = new Map(
  Object.entries<ColdNeed>({
    cabbage: cole,
    kale: cole,
    "sprouting-broccoli": cole,
    cauliflower: cole,
    "brussels-sprouts": cole,
    kohlrabi: cole,
    collards: cole,
    beet,
    chard: beet,
    leek: {
      bandC: [4, 8],
      days: [42, 42],
      undoneFromC: 22,
      source:
        "4 to 8 °C for 42 days from the three-leaf stage, best at 7 °C; none at 18 to 20 °C (Wurr and others 1999, Wiebe 1994, second hand)",
    },
  }),
);

export function coldNeedOf(kindId: string): ColdNeed | null {
  return needs.get(kindId) ?? null;
}
