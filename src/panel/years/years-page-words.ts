/** Words of the page of years. What is said of the years themselves stands in core/renewal. */
import type { SeedEnd } from "../../core/renewal/seed-life.ts";
import type { Choice } from "../state/plan-words.ts";
import { formOf } from "../../core/words/plurals.ts";

export const yearsPageWords = {
  squareMetres: "m²",
  squareFeet: "sq ft",
  title: "Which year for which",
  intro:
    "Who is grown for seed in which season, so that no lot dies, what crosses stays apart, ground rests and the work is even. Press a season of a variety to change it by hand.",
  settings: "What it goes by",
  seasons: "Seasons",
  end: "Grown again before",
  ground: (unit: string) => `Ground for seed in a season (${unit})`,
  groundHint: (area: string | null) =>
    area === null
      ? "No bed is drawn: left empty, ground is not counted"
      : `Left empty: all beds, ${area}`,
  groundRefused: "Type an area of more than nothing",
  cages: "Varieties in cages, at most",
  bags: "In bags or pollinated by hand, at most",
  most: "Varieties for seed in a season, at most",
  mostHint: "Left empty: no limit",
  notLaidYet:
    "No season is laid out yet: lay out the years, or press a season of a variety to set it by hand.",
  layOut: "Lay out the years",
  layOutAnew: "Lay out anew",
  cancel: "Cancel",
  takeFirst: "Apply this answer",
  running: "Working out a first answer ...",
  proving: "A first answer is shown below. Looking for a better one, and for proof ...",
  progressLabel: "Lay-out and proof",
  failed: "The years could not be laid out.",
  clearHand: "Clear what was set by hand",
  clear: "Clear",
  seedList: (season: string) => `Make the seed list of ${season}`,
  seedListDone: (season: string) => `✓ In the seed list of ${season}`,
  print: "Save a page for the wall (PDF)",
  saved: "Download started.",
  table: "Varieties by seasons",
  variety: "Variety",
  lasts: "Best lot lasts",
  lastsTo: (month: string) => `to ${month}`,
  long: "over a century",
  counts: "Grown for seed",
  firstYears: "In their first year",
  ground2: "Ground",
  covers: "Under covers",
  ends: "ends",
  mayEnd: "may end",
  notGrown: "not grown",
  byHand: "by hand",
  legend:
    "seed: grown for seed · first year: a biennial's year before · cover: in a cage, bags or pollinated by hand · ends: its best lot is likely under its standard within that season · may end: the early end of its band · ✕ something stands against it",
  against: "What stands against it",
  cautions: "To know",
  notLaid: "Not laid out",
  leaveOut: "Leave out",
  pickOne: "Pick a variety",
  layOutAgain: "Lay out again",
  undo: {
    settings: "Change what the years go by",
    layOut: "Lay out the years",
    byHand: (name: string, season: string) => `Set ${season} of ${name} by hand`,
    clear: "Clear the years",
    seedList: (season: string) => `Seed list of ${season} by the years`,
    leaveOut: (name: string) => `Leave ${name} out of the years`,
    layOutAgain: (name: string) => `Lay out ${name} again`,
  },
} as const;

export function cellLabel(name: string, season: string, words: string): string {
  return `${name}, ${season}: ${words}`;
}

export function seedListAdded(count: number, season: string): string {
  const varieties = formOf(count, { one: "1 variety is", other: `${count} varieties are` });
  return `${varieties} in the seed list of ${season}, with plants, lot and reason.`;
}

export const endChoices: readonly Choice<SeedEnd>[] = [
  { value: "likely", label: "the likely end of its best lot's band" },
  { value: "earliest", label: "the early end of its best lot's band" },
];
