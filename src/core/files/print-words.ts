/** What is printed of a plan, by name, why there is nothing of it, and what to look at before. */
import { counted } from "../words/plurals.ts";

export const printTitles = {
  map: "Plot map, with notes and plot list",
  "bed-cards": "Cards of the beds, with a drawing and room to write",
  calendar: "Season calendar by week",
  harvest: "Harvest list, by when seed is ripe, with room to write",
  isolation: "Isolation report for each seed planting",
  "set-out": "Set-out table, to mark the beds with two tapes",
  "sowing-list": "Sowing list, in order of sowing",
  years: "Which year for which, varieties by seasons",
  layouts: "Layouts compared, drawn side by side",
  "lot-isolation": "How lots on the shelf were isolated as they grew",
  neighbours: "Notes to neighbours, what to ask them",
  stakes: "Stake labels, one for each planting",
  packets: "Packet labels, for this season's seed",
  shelf: "Packet labels, for the lots on the shelf",
} as const;

export const nothingToPrint = {
  beds: "there is no bed",
  plantings: "nothing is planted",
  seed: "nothing is kept for seed",
  neighbours: "no pollen source is marked, or nothing is kept for seed",
  lots: "no lot is in stock",
  years: "no years are laid out",
  layouts: "there is one layout",
  lotIsolation: "no lot carries how it was isolated",
} as const;

export const remarkWords = {
  noRoom: (names: string) => `No room on the map for: ${names}; see the plot list`,
  noSite: "The site has no name",
  noSeason: "The season has no name",
  noPlanting: "Nothing is planted in this layout",
  openConflicts: (count: number) =>
    counted(count, { one: "conflict is open", other: "conflicts are open" }),
  fileTitle: (map: string, what: string) => `${map}: ${what}`,
} as const;
