/** What stands on packets and on the page that goes with labels. */
import { counted } from "../words/plurals.ts";
import type { LabelUse } from "./label-facts.ts";

/** Room to write by hand. */
export const BLANK = "______";

export const packetWords = {
  harvest: (year: number | string) => `Harvest ${year}`,
  plot: (code: string) => `plot ${code}`,
  lot: (code: string) => `Lot ${code}`,
  sownFrom: (lots: string) => `sown from ${lots}`,
  season: (name: string) => `Season ${name}`,
  from: (who: string) => `From ${who}`,
  grownAt: (site: string) => `Grown at ${site}`,
  savedFrom: (plants: number) => `Saved from ${counted(plants, { one: "plant", other: "plants" })}`,
  savedFromUncounted: "Saved from ____ plants",
} as const;

/** What a label should say and the plan does not know. */
export const missingWords = {
  date: "date",
  lot: "lot",
  where: "where it was grown",
  plants: "plants saved from",
  test: "germination and month of the test",
  year: "year of harvest",
} as const;

/** Said where there is nothing to label. */
export const nothingToLabel: Readonly<Record<LabelUse, string>> = {
  stakes: "nothing is planted",
  packets: "nothing is kept for seed",
  lots: "no lot is in stock",
};

export const sheetWords = {
  title: (map: string) => `${map}: labels`,
  page: (number: number) => `Labels ${number}`,
  machineCode: (code: string) => `Code for a machine: ${code}`,
} as const;

export const beforeUseWords = {
  page: "Before use",
  noRoom: (words: string) => `No room on the label for ${words}`,
  noCode: (heads: string) => `No room for the code for a machine on: ${heads}`,
  remarks: "Before these labels are used",
  selling: "Before seed in these packets is given away or sold",
  stillEmpty: "Still empty",
  missing: (head: string, missing: string) => `${head}: ${missing}.`,
  law: [
    "These labels certify nothing. What a label must say differs by country and state: often kind and variety, lot, where it was grown, weight or count, germination with the month of the test, and any treatment. Ask the seed law of the place; it goes before anything printed here.",
    "Germination stands on a packet only where that very lot has been tested. United States, 7 CFR 201.29 to 201.31: packets up to a pound need germination, hard seed, month of the test and the words Below Standard, in 8 point or larger, when the test lies under the kind's standard; heavier ones always need germination, month of the test and lot. A test holds for 5 calendar months after its month, 24 in a hermetic pack. State law and that of other countries add to it or differ.",
  ],
  planned:
    "The isolation on a label is the one planned, not the one achieved: strike it out where a cover tore, bloom shifted or another pollen source was found. The distances stand in the isolation report.",
} as const;
