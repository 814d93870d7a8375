/**
 * How many years ground should have been without what before a seed crop: the guidance of England
 * and Wales on previous cropping (uk-annex-1), row by row. Years are seed years, from July to June.
 * Good practice mixes two matters, purity of the seed and diseases of the soil, and counts families
 * for some crops; the minimum mostly counts what can cross. The years of 7 CFR 201.76 stand with
 * the kinds (landYears) and in us-land.ts.
 */
import type { Taxa } from "./taxa.ts";

export type LandColumn = "good practice" | "minimum" | "rule";

/** So many years without these. */
export interface LandPart {
  readonly years: number;
  readonly of: Taxa;
  /** Only crops that bore seed count. */
  readonly isSeedOnly?: true;
}

export interface LandRow {
  /** The crop and the class as printed. */
  readonly crop: string;
  readonly seedClass: string;
  readonly column: LandColumn;
  /** The years as printed. */
  readonly printed: string;
  readonly parts: readonly LandPart[];
  /** What may not have grown there, in the table's sense. */
  readonly words: string;
}

const CEREALS: Taxa = ["Triticum", "Hordeum", "Avena", "Secale"];
const FORAGE: Taxa = ["Medicago", "Trifolium", "Onobrychis"];
const SAME: Taxa = ["same species"];
const CRUCIFERS: Taxa = ["Brassicaceae"];

/** The two columns of a crop whose every class is asked the same. */
function bothColumns(
  crop: string,
  good: Pick<LandRow, "printed" | "parts" | "words">,
  minimum: Pick<LandRow, "printed" | "parts" | "words">,
  seedClass = "all",
): readonly LandRow[] {
  return [
    { crop, seedClass, column: "good practice", ...good },
    { crop, seedClass, column: "minimum", ...minimum },
  ];
}

const sameSpecies = (years: number, words = "no crop of the same species") => ({
  printed: String(years),
  parts: [{ years, of: SAME }],
  words,
});

const otherVariety = (years: number) => sameSpecies(years, "no other variety of the same species");

const pulsesFor = (years: number, of: Taxa, words: string) => ({
  printed: String(years),
  parts: [{ years, of }],
  words,
});

const fieldPulse = (crop: string) =>
  bothColumns(
    crop,
    pulsesFor(2, ["Pisum", "Vicia faba"], "no pea or field bean, alone or in a mixture"),
    sameSpecies(1, "no crop that holds the same species"),
  );

export const landTable: readonly LandRow[] = [
  {
    crop: "wheat, barley, oats, triticale",
    seedClass: "pre-basic/basic",
    column: "good practice",
    printed: "2",
    parts: [
      { years: 2, of: SAME },
      { years: 2, of: CEREALS },
    ],
    words: "no other variety of the same species, and no other cereal",
  },
  {
    crop: "wheat, barley, oats, triticale",
    seedClass: "pre-basic/basic",
    column: "minimum",
    printed: "1",
    parts: [{ years: 1, of: SAME }],
    words: "no other variety of the same species",
  },
  {
    crop: "wheat, barley, oats, triticale",
    seedClass: "C1, C2",
    column: "good practice",
    printed: "2 (other cereal species 1)",
    parts: [
      { years: 2, of: SAME },
      { years: 1, of: CEREALS },
    ],
    words: "no other variety of the same species; no other cereal in 1 year",
  },
  {
    crop: "wheat, barley, oats, triticale",
    seedClass: "C1, C2",
    column: "minimum",
    printed: "1",
    parts: [{ years: 1, of: SAME }],
    words: "no other variety of the same species",
  },
  ...bothColumns("rye", sameSpecies(1, "no other variety of rye or triticale"), otherVariety(1)),
  ...fieldPulse("field pea"),
  ...fieldPulse("field bean (Vicia faba)"),
  ...bothColumns(
    "broad bean",
    pulsesFor(
      4,
      ["Vicia faba", "Phaseolus", "Pisum", ...FORAGE],
      "no bean, pea, lucerne, clover or sainfoin",
    ),
    sameSpecies(1),
  ),
  ...bothColumns(
    "French bean",
    pulsesFor(4, ["Pisum", "Vicia faba", "Phaseolus"], "no pea or bean"),
    sameSpecies(1),
  ),
  ...bothColumns(
    "soybean",
    {
      printed: "5 (peas, beans 2)",
      parts: [
        { years: 5, of: SAME },
        { years: 2, of: ["Pisum", "Vicia faba", "Phaseolus"] },
      ],
      words: "no soybean; no pea or bean in 2 years",
    },
    sameSpecies(1),
  ),
  ...bothColumns(
    "lupin",
    pulsesFor(2, ["Lupinus"], "no lupin"),
    pulsesFor(1, ["Lupinus"], "no lupin"),
  ),
  ...bothColumns(
    "crucifers: oilseed rape (not hybrids), fodder rape, turnip rape, brown, black and white mustard",
    { printed: "5", parts: [{ years: 5, of: CRUCIFERS }], words: "no crop of the cabbage family" },
    {
      printed: "2",
      parts: [{ years: 2, of: CRUCIFERS, isSeedOnly: true }],
      words: "no crop of the cabbage family that bore seed",
    },
  ),
  ...bothColumns(
    "hybrid oilseed rape",
    {
      printed: "5",
      parts: [{ years: 5, of: CRUCIFERS }],
      words: "by statute: no crop of the cabbage family",
    },
    {
      printed: "5",
      parts: [{ years: 5, of: CRUCIFERS }],
      words: "by statute: no crop of the cabbage family",
    },
  ),
  ...bothColumns(
    "turnip",
    {
      printed: "5 (3 if transplanted)",
      parts: [{ years: 5, of: CRUCIFERS }],
      words: "no crop of the cabbage family; 3 years for a transplanted seed crop",
    },
    {
      printed: "2",
      parts: [{ years: 2, of: CRUCIFERS }],
      words: "no crop of the cabbage family",
    },
  ),
  ...bothColumns(
    "beet (Beta vulgaris)",
    {
      printed: "5 (beet of any use 2)",
      parts: [
        { years: 5, of: SAME, isSeedOnly: true },
        { years: 2, of: SAME },
      ],
      words: "no beet that bore seed; no beet of any use in 2 years",
    },
    { ...sameSpecies(2), words: "no crop of the same species" },
  ),
  ...bothColumns(
    "flax, linseed",
    sameSpecies(5, "no flax or linseed"),
    sameSpecies(2, "no flax or linseed"),
  ),
  ...bothColumns("hemp", sameSpecies(2, "no hemp"), sameSpecies(2)),
  ...bothColumns(
    "red and white clover, lucerne, sainfoin, small legumes",
    {
      printed: "4 / 6",
      parts: [{ years: 6, of: SAME }],
      words: "no other variety of the same species; 4 years for certified seed",
    },
    otherVariety(4),
    "certified / basic",
  ),
  ...bothColumns(
    "ryegrass, cocksfoot, fescues, timothy",
    {
      printed: "4 / 6",
      parts: [{ years: 6, of: SAME }],
      words:
        "no other variety of the same species; 4 years for certified seed; other grasses 2 to 4",
    },
    {
      printed: "4",
      parts: [{ years: 4, of: SAME }],
      words: "no other variety of the same species; other grass 2 years",
    },
    "certified / basic",
  ),
  {
    crop: "maize",
    seedClass: "all",
    column: "rule",
    printed: "0",
    parts: [],
    words:
      "maize may follow maize; then one more inspection must find the field free of volunteers",
  },
];
