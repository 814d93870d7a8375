/** What each file is called and is good for, and why one cannot be made. */
import type { LabelUse } from "../labels/label-facts.ts";

export interface ExportWords {
  readonly title: string;
  /** What it is good for, one sentence. */
  readonly about: string;
}

export const exportWords: ReadonlyMap<string, ExportWords> = new Map([
  [
    "plot-map",
    {
      title: "Plot map (PDF)",
      about: "Map sheets at a true ratio, notes and plot list, on A4 or Letter, ready to print.",
    },
  ],
  [
    "lot-isolation",
    {
      title: "Isolation of harvested lots (PDF)",
      about:
        "How each lot was isolated as grown, frozen at harvest, with what nobody observed: for a buyer or an inspector.",
    },
  ],
  [
    "sowing-list",
    {
      title: "Sowing list (PDF)",
      about: "In order of sowing: lot, where it is kept, seeds, grams, plot, and a box to tick.",
    },
  ],
  [
    "years",
    {
      title: "Which year for which (PDF)",
      about: "Varieties by seasons, who is grown for seed when: one page for the wall.",
    },
  ],
  [
    "sowing-csv",
    { title: "Sowing list (CSV)", about: "One row for each planting and lot, in order of sowing." },
  ],
  [
    "lots",
    {
      title: "Seed lots (CSV)",
      about: "One row for each lot on the shelf, to be edited in a spreadsheet and read back.",
    },
  ],
  [
    "compare",
    {
      title: "Layouts compared (PDF)",
      about: "All layouts drawn at one ratio, the measures of each, and what differs in words.",
    },
  ],
  [
    "svg",
    {
      title: "Drawing (SVG)",
      about: "The ground alone at a true ratio, to be opened in a drawing program.",
    },
  ],
  [
    "svg-page",
    {
      title: "Map page (SVG)",
      about: "The whole map on one page, with title, key, scale bar, north arrow and all notes.",
    },
  ],
  [
    "png",
    {
      title: "Picture (PNG)",
      about: "The map page with its notes as dots, for a message or a web page.",
    },
  ],
  [
    "geojson",
    {
      title: "Ground and plantings (GeoJSON)",
      about:
        "Outlines in longitude and latitude, for maps and other programs; Wideberth reads it back.",
    },
  ],
  [
    "gpx",
    {
      title: "Bed corners (GPX)",
      about: "One waypoint for each corner of each bed, for a satellite receiver.",
    },
  ],
  ["plots", { title: "Plots (CSV)", about: "One row for each planting, for a spreadsheet." }],
  [
    "varieties",
    { title: "Seed list (CSV)", about: "One row for each variety; Wideberth reads it back." },
  ],
  [
    "pairs",
    {
      title: "Pairs that can cross (CSV)",
      about: "One row for each seed parent and pollen source: distance, bloom, what it rests on.",
    },
  ],
  [
    "calendar",
    {
      title: "Season calendar (iCalendar)",
      about: "Sowing, roguing, covers, bloom and ripe seed as whole-day events.",
    },
  ],
]);

export const labelWords: Readonly<Record<LabelUse, ExportWords>> = {
  stakes: {
    title: "Stake labels (PDF)",
    about: "One label for each planting: code, variety, kind, dates, lot.",
  },
  packets: {
    title: "Seed packet labels (PDF)",
    about: "One label for each planting kept for seed, and a page on what the law may ask for.",
  },
  lots: {
    title: "Packets of the shelf (PDF)",
    about: "One label for each lot in stock, with its test and its origin.",
  },
};

export const hindranceWords = {
  position: "the site has no longitude and latitude",
  layouts: "it has one layout, and it takes two to compare",
  lots: "no lot is in stock on the shelf",
  canvas: "it is made in the browser only",
  inBrowser: "A picture of dots is made in the browser only",
} as const;
