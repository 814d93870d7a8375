/** What the plot map says: titles, key, panel, notes and the columns of the plot list. */
import type { Cover, Planting } from "../model/plan.ts";
import { counted } from "../words/plurals.ts";
import type { StyleName } from "./map-style.ts";
import type { MapSheet, SheetPlan } from "./page-plan.ts";

/** What the key says of each line. */
export const styleWords: Readonly<Record<StyleName, string>> = {
  seed: "for seed",
  "not seed": "not for seed",
  conflict: "in a conflict",
  disease: "disease: go there last",
  measure: "too close",
  rows: "row ends; dot: row 1",
  stake: "stake for tapes",
  pollen: "pollen source",
  point: "single plant or stand",
  bed: "bed",
  site: "site's edge",
  hedge: "hedge",
  fence: "fence",
  tree: "tree; cross: trunk",
  building: "building",
  water: "water",
  path: "path",
  slope: "slope; arrow: down",
  other: "other ground",
  differs: "differs; its number stands in the list of differences",
  was: "as it was, or what was removed",
};

/** A covered planting says so beside its code; empty where there is none. */
export const coverMarks: Readonly<Record<Cover, string>> = {
  none: "",
  cage: "cage",
  bags: "bags",
  hand: "hand",
};

/** What a planting is grown for, in the plot list. */
export const purposeWords: Readonly<Record<Planting["purpose"], string>> = {
  seed: "seed",
  food: "food",
  other: "other",
};

/** What every page of a map says in its header. */
export const headerWords = {
  seedPlots: (place: string) => `Seed plots, ${place}`,
  inSeason: (place: string, season: string) => `${place}, season ${season}`,
  onPaper: (ratio: string, paper: string) => `${ratio} on ${paper}`,
  revision: (code: string) => `rev ${code}`,
  asGrown: (date: string) => `as grown on ${date}`,
  printed: (at: string) => `printed ${at}`,
  span: (first: string, last: string) => `${first} to ${last}`,
  northUp: "north is up",
  arrow: "the arrow shows true north",
  /** Rows and columns are counted from 0. */
  sheetPlace: (
    { number, row, column }: Pick<MapSheet, "number" | "row" | "column">,
    { rows, columns }: Pick<SheetPlan, "rows" | "columns">,
  ) =>
    `sheet ${number} of ${rows * columns}: row ${row + 1} of ${rows}, column ${column + 1} of ${columns}`,
  page: (name: string, page: number, of: number) => `${name}, page ${page} of ${of}`,
} as const;

export const sheetWords = {
  map: "Map",
  mapSheet: (number: number) => `Map sheet ${number}`,
  drawing: (ratio: string) => `Drawing of the ground at ${ratio}.`,
  empty: "Nothing is on it.",
  onIt: (names: string) => `On it: ${names}.`,
  seeList: "Each planting has its row in the plot list.",
  caution: (title: string, number: number) =>
    `Caution: ${title}. Read number ${number} in the notes.`,
  known: (title: string) => `Caution: ${title}.`,
  checks: (counts: string) => `Checks: ${counts}`,
  checksInNotes: (counts: string) => `Checks: ${counts}, in the notes.`,
  beyond: "Pollen sources beyond the map",
  allInNotes: "All of them, in full, in the notes.",
  keyInNotes: "The key goes on in the notes.",
  moreInNotes: (count: number) => `And ${count} more in the notes.`,
  moreHereInNotes: (count: number) => `And ${count} more on this sheet, in the notes.`,
  beyondInNotes: (count: number) => `Pollen sources beyond the map: ${count} in the notes.`,
  moreBeyondInNotes: (count: number) =>
    `Pollen sources beyond the map: ${count} more in the notes.`,
  bed: (code: string) => `bed ${code}`,
  named: (label: string, kind: string) => `${label} (${kind})`,
  /** `wild carrot (carrot): 310 m north-east of A02-1, true bearing 48°`. */
  farSource: (name: string, measure: string, from: string, bearingDeg: number) =>
    `${name}: ${measure} of ${from}, true bearing ${bearingDeg}°`,
  cut: (names: string) => `Cut by the edge of the map: ${names}.`,
  plots: "Plots, in the order of the walk",
  toEat: "to eat",
  /** Beside what is marked on the ground: `white rot 2025`. */
  marked: (disease: string, year: number) => `${disease} ${year}`,
  plants: (count: number) => counted(count, { one: "plant", other: "plants" }),
  pictureLeft: "The picture is not printed: it cannot be read, or has more than 25 million dots",
  unset: (count: number, names: string) =>
    `The face has no letters for ${counted(count, { one: "name", other: "names" })}, signs are printed in their place: ${names}`,
  andMore: (names: string, count: number) => `${names} and ${count} more`,
} as const;

export const keyWords = {
  hatch: "Hatch: what crosses with what",
  lines: "Lines",
  shared: "Groups with one hatch: the name of the kind stands by the code.",
  grid: "Crosses: the grid, for squares such as c4.",
  sheets: "Sheets",
  shaded: (sheet: number) => `Shaded: this sheet, ${sheet}.`,
  crossed: "Crossed: nothing of this garden is on it, so it is not printed.",
  around: "Dotted: pollen sources around.",
  joins: (sheet: number) => `sheet ${sheet}`,
  northUp: "North arrow: north is up.",
  northTurned: (degrees: number) =>
    `North arrow: the top of the sheet points ${degrees} degrees clockwise from true north.`,
  bars: (ratio: string) =>
    `Scale bar at ${ratio}, and check bars of 100 mm and 4 in along the foot and the side, to be measured on the print.`,
  checkBars: "Check bars: measure before use",
} as const;

export const noteWords = {
  checks: (counts: string) => `What the checks say: ${counts}`,
  noConflict: "no conflict",
  nothing: "Nothing to report.",
  accepted: "Accepted by the grower",
  sentence: (title: string) => `${title}.`,
  acceptedFor: (title: string, reason: string) => `${title}. Reason: ${reason}`,
  keyOn: "Key, continued",
  marks: "Diseases in the ground",
  /** What stays in the ground is carried on boots and tools (common practice). */
  marked: (disease: string, seenOn: string, beds: readonly string[]) =>
    `${disease.charAt(0).toUpperCase()}${disease.slice(1)}, seen ${seenOn}: ${beds.length === 0 ? "beside the beds" : beds.join(", ")}. Go there last, and clean boots and tools after it.`,
  about: "About this map",
  measure:
    "Measure the check bars before you use the map: 100 mm and 4 in must be true both ways. A sheet that was printed to fit, or copied smaller, is right only by its scale bar.",
  distances:
    "Distances are the shortest between planted outlines. Required distances come from the source named beside each, or from the grower. They make crossing rare; they do not rule it out.",
  seedLaw:
    "This map certifies nothing. Seed that is sold or given away is under the seed law of the place; ask there what a label must say.",
  noRoom: (names: string) => `No room was found on the map for these names: ${names}.`,
  noShape: (names: string) =>
    `The map's type has no shape for some characters; they are printed as boxes. The names of: ${names}.`,
} as const;

export const plotListWords = {
  title: "Plot list",
  walk: "Walk",
  plot: "Plot",
  square: "Square",
  variety: "Variety, kind",
  use: "For",
  lot: "Lot",
  plants: "Plants, size",
  start: "Start, expected bloom",
  nearest: "Nearest that could cross",
  noneHere: "none here",
  started: "Started",
  up: "Up",
  firstBloom: "First bloom",
  rogued: "Rogued",
  harvest: "Harvest",
  notes: "Notes",
} as const;

/** What stands in the rows of the plot list. */
export const rowWords = {
  hybrid: (variety: string) => `${variety} (hybrid)`.trim(),
  underGlass: (date: string) => `under glass ${date}`,
  sow: (date: string) => `sow ${date}`,
  setOut: (date: string) => `set out ${date}`,
  stands: "stands",
  clear: (date: string) => `clear ${date}`,
  short: (measured: string, required: string) => `${measured} of ${required}`,
  enough: (measured: string, required: string) => `${measured}, needs ${required}`,
  rows: (count: number) => counted(count, { one: "row", other: "rows" }),
  inRows: (plants: number, rows: string) => `${plants} in ${rows}`,
  cut: "cut before bloom",
  noBloom: "no bloom this year",
  notKnown: "bloom not known",
  from: (first: string) => `from ${first} on`,
  span: (first: string, last: string) => `${first} to ${last}`,
} as const;
