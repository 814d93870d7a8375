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

/** Rows of the table of England and Wales by kind: the crop and class as printed there. */
const rowsOf: Readonly<Record<string, { readonly crop: string; readonly seedClass?: string }>> = {
  wheat: { crop: "wheat, barley, oats, triticale" },
  barley: { crop: "wheat, barley, oats, triticale" },
  oat: { crop: "wheat, barley, oats, triticale" },
  rye: { crop: "rye" },
  pea: { crop: "field pea" },
  "broad-bean": { crop: "broad bean" },
  "common-bean": { crop: "French bean" },
  soybean: { crop: "soybean" },
  "oilseed-rape": {
    crop: "crucifers: oilseed rape (not hybrids), fodder rape, turnip rape, brown, black and white mustard",
  },
  turnip: { crop: "turnip" },
  beet: { crop: "beet (Beta vulgaris)" },
  flax: { crop: "flax, linseed" },
};
/** Kinds that stand under the row of another. */
const sameRow: Readonly<Record<string, string>> = {
  mustard: "oilseed-rape",
  "black-mustard": "oilseed-rape",
  "white-mustard": "oilseed-rape",
  chard: "beet",
  "sugar-beet": "beet",
  "fodder-beet": "beet",
};

/** The column asked for at a level: good practice for stock seed, else the minimum. Ours. */
export function columnOf(level: PurityLevel | null): LandColumn {
  return level === "stock" ? "good practice" : "minimum";
}

/** The row a kind stands under; crucifers that have none are read with rape and the mustards. */
function rowKey(kind: Kind): { readonly key: string; readonly isStretched: boolean } | null {
  const key = sameRow[kind.id] ?? kind.id;
  if (rowsOf[key]) return { key, isStretched: false };
  if (kind.family === "Brassicaceae") return { key: "oilseed-rape", isStretched: true };
  return null;
}

/**
 * What the table of England and Wales asks of a seed crop in one column. Cereals are held to the
 * class of certified seed, and for stock seed to that of basic seed.
 */
export function ukRules(kind: Kind, column: LandColumn): readonly LandRule[] {
  const found = rowKey(kind);
  const crop = found && rowsOf[found.key]?.crop;
  if (!found || crop === null) return [];
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
      note: found.isStretched ? "printed for rape and mustards" : fieldNote(kind),
      isStretched: found.isStretched,
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
