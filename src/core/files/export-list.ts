/** Every file Wideberth makes for others, by name: what it is, who it is for, what it needs. */
import type { LabelUse } from "../labels/label-facts.ts";
import type { Layout, Plan } from "../model/plan.ts";
import { compareFileName, exportFileName, plotMapFileName } from "../page/file-name.ts";
import { usualPaper } from "../page/paper.ts";

export interface ExportFormat {
  /** As `--format` has it. */
  readonly id: string;
  readonly title: string;
  /** What it is good for, one sentence. */
  readonly about: string;
  readonly mimeType: string;
  readonly extension: string;
  /** What of the plan is in it, as its file name says. */
  readonly what: string;
  /** Is made of the plan as grown where that is how it is read; absent: always as planned. */
  readonly followsReading?: true;
  /** What its labels are for; absent: it has none. */
  readonly labels?: LabelUse;
  /**
   * `position`: the site's longitude and latitude; `layouts`: two of them; `lots`: one in stock;
   * `canvas`: a browser.
   */
  readonly needs: "nothing" | "position" | "layouts" | "lots" | "canvas";
}

const labelTitles: Readonly<Record<LabelUse, readonly [string, string]>> = {
  stakes: ["Stake labels", "One label for each planting: code, variety, kind, dates, lot."],
  packets: [
    "Seed packet labels",
    "One label for each planting kept for seed, and a page on what the law may ask for.",
  ],
  lots: ["Packets of the shelf", "One label for each lot in stock, with its test and its origin."],
};

export const exportList: readonly ExportFormat[] = [
  {
    id: "plot-map",
    followsReading: true,
    title: "Plot map (PDF)",
    about: "Map sheets at a true ratio, notes and plot list, on A4 or Letter, ready to print.",
    mimeType: "application/pdf",
    extension: "pdf",
    what: "plot map",
    needs: "nothing",
  },
  labelFormat("stake-labels", "stakes"),
  labelFormat("packet-labels", "packets"),
  labelFormat("lot-labels", "lots"),
  {
    id: "lot-isolation",
    title: "Isolation of harvested lots (PDF)",
    about:
      "How each lot was isolated as grown, frozen at harvest, with what nobody observed: for a buyer or an inspector.",
    mimeType: "application/pdf",
    extension: "pdf",
    what: "isolation as grown",
    needs: "nothing",
  },
  {
    id: "sowing-list",
    title: "Sowing list (PDF)",
    about: "In order of sowing: lot, where it is kept, seeds, grams, plot, and a box to tick.",
    mimeType: "application/pdf",
    extension: "pdf",
    what: "sowing list",
    needs: "nothing",
  },
  {
    id: "years",
    title: "Which year for which (PDF)",
    about: "Varieties by seasons, who is grown for seed when: one page for the wall.",
    mimeType: "application/pdf",
    extension: "pdf",
    what: "years",
    needs: "nothing",
  },
  {
    id: "sowing-csv",
    title: "Sowing list (CSV)",
    about: "One row for each planting and lot, in order of sowing.",
    mimeType: "text/csv",
    extension: "csv",
    what: "sowing list",
    needs: "nothing",
  },
  {
    id: "lots",
    title: "Seed lots (CSV)",
    about: "One row for each lot on the shelf, to be edited in a spreadsheet and read back.",
    mimeType: "text/csv",
    extension: "csv",
    what: "seed lots",
    needs: "nothing",
  },
  {
    id: "compare",
    title: "Layouts compared (PDF)",
    about: "All layouts drawn at one ratio, the measures of each, and what differs in words.",
    mimeType: "application/pdf",
    extension: "pdf",
    what: "layouts compared",
    needs: "layouts",
  },
  {
    id: "svg",
    followsReading: true,
    title: "Drawing (SVG)",
    about: "The ground alone at a true ratio, to be opened in a drawing program.",
    mimeType: "image/svg+xml",
    extension: "svg",
    what: "drawing",
    needs: "nothing",
  },
  {
    id: "svg-page",
    followsReading: true,
    title: "Map page (SVG)",
    about: "The whole map on one page, with title, key, scale bar, north arrow and all notes.",
    mimeType: "image/svg+xml",
    extension: "svg",
    what: "map page",
    needs: "nothing",
  },
  {
    id: "png",
    followsReading: true,
    title: "Picture (PNG)",
    about: "The map page with its notes as dots, for a message or a web page.",
    mimeType: "image/png",
    extension: "png",
    what: "map page",
    needs: "canvas",
  },
  {
    id: "geojson",
    title: "Ground and plantings (GeoJSON)",
    about:
      "Outlines in longitude and latitude, for maps and other programs; Wideberth reads it back.",
    mimeType: "application/geo+json",
    extension: "geojson",
    what: "layout",
    needs: "position",
  },
  {
    id: "gpx",
    title: "Bed corners (GPX)",
    about: "One waypoint for each corner of each bed, for a satellite receiver.",
    mimeType: "application/gpx+xml",
    extension: "gpx",
    what: "bed corners",
    needs: "position",
  },
  {
    id: "plots",
    title: "Plots (CSV)",
    about: "One row for each planting, for a spreadsheet.",
    mimeType: "text/csv",
    extension: "csv",
    what: "plots",
    needs: "nothing",
  },
  {
    id: "varieties",
    title: "Seed list (CSV)",
    about: "One row for each variety; Wideberth reads it back.",
    mimeType: "text/csv",
    extension: "csv",
    what: "seed list",
    needs: "nothing",
  },
  {
    id: "pairs",
    followsReading: true,
    title: "Pairs that can cross (CSV)",
    about: "One row for each seed parent and pollen source: distance, bloom, what it rests on.",
    mimeType: "text/csv",
    extension: "csv",
    what: "pairs",
    needs: "nothing",
  },
  {
    id: "calendar",
    title: "Season calendar (iCalendar)",
    about: "Sowing, roguing, covers, bloom and ripe seed as whole-day events.",
    mimeType: "text/calendar",
    extension: "ics",
    what: "season calendar",
    needs: "nothing",
  },
];

function labelFormat(id: string, use: LabelUse): ExportFormat {
  const [title, about] = labelTitles[use];
  return {
    id,
    title: `${title} (PDF)`,
    about,
    mimeType: "application/pdf",
    extension: "pdf",
    what: id.replace("-", " "),
    needs: use === "lots" ? "lots" : "nothing",
    labels: use,
    ...(use === "packets" ? { followsReading: true as const } : {}),
  };
}

/** The format with an id; a mistyped one is a bug. */
export function exportById(id: string): ExportFormat {
  const format = exportList.find((each) => each.id === id);
  if (!format) throw new Error(`There is no file "${id}".`);
  return format;
}

/** Why a format cannot be made of a plan here, in words; null when it can. */
export function exportHindrance(
  format: ExportFormat,
  plan: Plan,
  hasCanvas: boolean,
): string | null {
  if (format.needs === "position" && !plan.site.position) {
    return "the site has no longitude and latitude";
  }
  if (format.needs === "layouts" && plan.layouts.length < 2) {
    return "it has one layout, and it takes two to compare";
  }
  if (format.needs === "lots" && !plan.lots.some(({ state }) => state === "in stock")) {
    return "no lot is in stock on the shelf";
  }
  return format.needs === "canvas" && !hasCanvas ? "it is made in the browser only" : null;
}

/** What the file is called. */
export function formatFileName(
  { id, what, extension }: ExportFormat,
  plan: Plan,
  layout: Layout,
): string {
  if (id === "compare") {
    return compareFileName(plan, [layout, ...plan.layouts.filter((each) => each !== layout)]);
  }
  return id === "plot-map"
    ? plotMapFileName(plan, layout, usualPaper(plan.units))
    : exportFileName(plan, layout, what, extension);
}
