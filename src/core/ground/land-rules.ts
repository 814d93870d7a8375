/** Which published years a seed crop is asked for, and whether an earlier crop counts under them. */
import type { Kind } from "../kinds/crop.ts";
import type { PurityLevel } from "../model/plan.ts";
import { type LandColumn, type LandPart, landTable } from "./land-table.ts";
import { isAmong } from "./taxa.ts";

/** One rule as it holds for a seed crop. */
export interface LandRule {
  readonly source: string;
  /** Null where the source has no columns. */
  readonly column: LandColumn | null;
  readonly parts: readonly LandPart[];
  /** What may not have grown there, in the source's sense; null: what crosses with the crop. */
  readonly words: string | null;
  readonly note: string | null;
  /** Printed for others of its family: it may ask for years, and never says that fewer do. */
  readonly isStretched: boolean;
}

const CEREALS = "wheat, barley, oats, triticale";
const CRUCIFERS =
  "crucifers: oilseed rape (not hybrids), fodder rape, turnip rape, brown, black and white mustard";
const BEET = "beet (Beta vulgaris)";

/** Under which crop of the table of England and Wales a kind stands, as printed there. */
const cropOf: ReadonlyMap<string, string> = new Map([
  ["wheat", CEREALS],
  ["barley", CEREALS],
  ["oat", CEREALS],
  ["rye", "rye"],
  ["pea", "field pea"],
  ["broad-bean", "broad bean"],
  ["common-bean", "French bean"],
  ["soybean", "soybean"],
  ["oilseed-rape", CRUCIFERS],
  ["mustard", CRUCIFERS],
  ["black-mustard", CRUCIFERS],
  ["white-mustard", CRUCIFERS],
  ["turnip", "turnip"],
  ["beet", BEET],
  ["chard", BEET],
  ["sugar-beet", BEET],
  ["fodder-beet", BEET],
  ["flax", "flax, linseed"],
]);

/** The column asked for at a level: good practice for stock seed, else the minimum. Ours. */
export function columnOf(level: PurityLevel | null): LandColumn {
  return level === "stock" ? "good practice" : "minimum";
}

/**
 * What the table of England and Wales asks of a seed crop in one column. Cereals are held to the
 * class of certified seed, and for stock seed to that of basic seed.
 */
export function ukRules(kind: Kind, column: LandColumn): readonly LandRule[] {
  // Crucifers that have no row of their own are read with rape and the mustards.
  const isStretched = !cropOf.has(kind.id) && kind.family === "Brassicaceae";
  const crop = isStretched ? CRUCIFERS : cropOf.get(kind.id);
  const seedClass = column === "good practice" ? "pre-basic/basic" : "C1, C2";
  return landTable
    .filter(
      (row) =>
        row.crop === crop &&
        row.column === column &&
        (row.seedClass === "all" || row.seedClass === seedClass),
    )
    .map(({ parts, words }) => ({
      source: "uk-annex-1",
      column,
      parts,
      words,
      note: isStretched ? "printed for rape and mustards" : fieldNote(kind),
      isStretched,
    }));
}

function fieldNote({ id }: Kind): string | null {
  return id === "pea" ? "printed for field pea" : null;
}

/** Years of 7 CFR 201.76, of the strictest class, as they stand with the kind. */
function usRules({ landYears }: Kind): readonly LandRule[] {
  if (!landYears) return [];
  return [
    {
      source: landYears.source,
      column: null,
      parts: [{ years: landYears.value, of: [] }],
      words: null,
      note: landYears.note ?? null,
      isStretched: false,
    },
  ];
}

/** Every rule a seed crop is held to at a level. */
export function landRules(kind: Kind, level: PurityLevel | null): readonly LandRule[] {
  return [...usRules(kind), ...ukRules(kind, columnOf(level))];
}

export type WentToSeed = "yes" | "no" | "unknown";

/**
 * The longest years for which a rule counts an earlier crop, or null when it does not count it at
 * all. What is not known to have borne no seed counts as having borne some.
 */
export function yearsAsked(
  { parts, words }: LandRule,
  crop: Kind,
  earlier: Kind,
  wentToSeed: WentToSeed,
): number | null {
  const counted = parts.filter(
    (part) =>
      (words === null || isAmong(earlier, part.of, crop)) &&
      (part.isSeedOnly !== true || wentToSeed !== "no"),
  );
  return counted.length === 0 ? null : Math.max(...counted.map(({ years }) => years));
}
