/** Every file Wideberth makes for others: one list for the menu, the command line and the docs. */
import type { Layout, Plan } from "../model/plan.ts";
import { compareFileName, exportFileName, plotMapFileName } from "../page/file-name.ts";
import type { LabelChoice } from "../labels/label-pages.ts";
import type { LabelUse } from "../labels/labels-pdf.ts";
import { type CheckedLayout, checkLayouts } from "../checks/checked-layout.ts";
import { usualPaper } from "../page/paper.ts";
import type { PdfFonts } from "../page/pdf-writer.ts";

/** What core does not have of its own: the clock, type files, a canvas. */
export interface ExportMeans {
  /** Local date and time, `2027-03-02 09:40`. */
  readonly printedAt: string;
  /** The same moment in UTC, `20270302T094000Z`. */
  readonly stamp: string;
  readonly fonts: () => Promise<PdfFonts>;
  readonly labels: LabelChoice;
  /** Jobs that stay out of the calendar. */
  readonly leftOut?: ReadonlySet<string>;
  /** Ids of the lots wanted; left out: all. */
  readonly lots?: ReadonlySet<string>;
  /** Turns an SVG file into a PNG file; null where there is no canvas. */
  readonly raster: ((svg: string) => Promise<Uint8Array>) | null;
}

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
  /** `position`: the site's longitude and latitude; `layouts`: two of them; `canvas`: a browser. */
  readonly needs: "nothing" | "position" | "layouts" | "canvas";
  readonly make: (input: CheckedLayout, means: ExportMeans) => Promise<string | Uint8Array>;
}

// Each format's machinery is loaded when a file is made.
export const allExports: readonly ExportFormat[] = [
  {
    id: "plot-map",
    followsReading: true,
    title: "Plot map (PDF)",
    about: "Map sheets at a true ratio, notes and plot list, on A4 or Letter, ready to print.",
    mimeType: "application/pdf",
    extension: "pdf",
    what: "plot map",
    needs: "nothing",
    make: async (input, means) => {
      const { suggestedMap } = await import("../paper-set/suggested-map.ts");
      return suggestedMap(input, means.printedAt, await means.fonts());
    },
  },
  labelFormat("stake-labels", "stakes"),
  labelFormat("packet-labels", "packets"),
  {
    id: "lot-isolation",
    title: "Isolation of harvested lots (PDF)",
    about:
      "How each lot was isolated as grown, frozen at harvest, with what nobody observed: for a buyer or an inspector.",
    mimeType: "application/pdf",
    extension: "pdf",
    what: "isolation as grown",
    needs: "nothing",
    make: async (input, means) => {
      const { lotIsolationPdf } = await import("../paper-set/lot-isolation-pages.ts");
      return lotIsolationPdf(input, means.lots ?? null, means.printedAt, await means.fonts());
    },
  },
  {
    id: "sowing-list",
    title: "Sowing list (PDF)",
    about: "In order of sowing: lot, where it is kept, seeds, grams, plot, and a box to tick.",
    mimeType: "application/pdf",
    extension: "pdf",
    what: "sowing list",
    needs: "nothing",
    make: async (input, means) => {
      const { sowingListPdf } = await import("../paper-set/sowing-pages.ts");
      return sowingListPdf(input, means.printedAt, await means.fonts());
    },
  },
  {
    id: "sowing-csv",
    title: "Sowing list (CSV)",
    about: "One row for each planting and lot, in order of sowing.",
    mimeType: "text/csv",
    extension: "csv",
    what: "sowing list",
    needs: "nothing",
    make: async (input) => (await import("./sowing-csv.ts")).sowingCsv(input),
  },
  {
    id: "lots",
    title: "Seed lots (CSV)",
    about: "One row for each lot on the shelf, to be edited in a spreadsheet and read back.",
    mimeType: "text/csv",
    extension: "csv",
    what: "seed lots",
    needs: "nothing",
    make: async ({ plan, book }) => (await import("../exchange/lots-csv.ts")).lotsCsv(plan, book),
  },
  {
    id: "compare",
    title: "Layouts compared (PDF)",
    about: "All layouts drawn at one ratio, the measures of each, and what differs in words.",
    mimeType: "application/pdf",
    extension: "pdf",
    what: "layouts compared",
    needs: "layouts",
    make: async (checked, { printedAt, fonts }) => {
      const { comparePdf } = await import("../compare/compare-pdf.ts");
      const { plan, layout } = checked;
      const others = plan.layouts.filter(({ id }) => id !== layout.id);
      const compared = [checked, ...checkLayouts(plan, others)];
      const print = { paper: usualPaper(plan.units), isOverlaid: false, printedAt };
      return (await comparePdf(compared, print, await fonts())).bytes;
    },
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
    make: async (input, means) => {
      const { drawingSvg } = await import("../paper-set/drawing-svg.ts");
      return drawingSvg(input, means.printedAt, await means.fonts());
    },
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
    make: async (input, means) => {
      const { pageSvg } = await import("../paper-set/drawing-svg.ts");
      return pageSvg(input, means.printedAt, await means.fonts());
    },
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
    make: async (input, means) => {
      if (!means.raster) throw new RangeError("A picture of dots is made in the browser only");
      const { pageSvg } = await import("../paper-set/drawing-svg.ts");
      return means.raster(await pageSvg(input, means.printedAt, await means.fonts()));
    },
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
    make: async (input) => (await import("../exchange/plan-geojson.ts")).planGeojson(input),
  },
  {
    id: "gpx",
    title: "Bed corners (GPX)",
    about: "One waypoint for each corner of each bed, for a satellite receiver.",
    mimeType: "application/gpx+xml",
    extension: "gpx",
    what: "bed corners",
    needs: "position",
    make: async ({ plan, layout }) => (await import("./gpx.ts")).bedCornersGpx(plan, layout),
  },
  {
    id: "plots",
    title: "Plots (CSV)",
    about: "One row for each planting, for a spreadsheet.",
    mimeType: "text/csv",
    extension: "csv",
    what: "plots",
    needs: "nothing",
    make: async (input) => (await import("./plots-csv.ts")).plotsCsv(input),
  },
  {
    id: "varieties",
    title: "Seed list (CSV)",
    about: "One row for each variety; Wideberth reads it back.",
    mimeType: "text/csv",
    extension: "csv",
    what: "seed list",
    needs: "nothing",
    make: async ({ plan, book }) =>
      (await import("../exchange/varieties-csv.ts")).varietiesCsv(plan, book),
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
    make: async (input) => (await import("./pairs-csv.ts")).pairsCsv(input),
  },
  {
    id: "calendar",
    title: "Season calendar (iCalendar)",
    about: "Sowing, roguing, covers, bloom and ripe seed as whole-day events.",
    mimeType: "text/calendar",
    extension: "ics",
    what: "season calendar",
    needs: "nothing",
    make: async (checked, { stamp, leftOut }) => {
      const [{ icalendar }, { seasonJobs }] = await Promise.all([
        import("./icalendar.ts"),
        import("../fieldwork/season-calendar.ts"),
      ]);
      const jobs = seasonJobs(checked).filter(({ job }) => leftOut?.has(job) !== true);
      return icalendar(checked.plan, checked.layout, jobs, stamp);
    },
  },
];

function labelFormat(id: string, use: LabelUse): ExportFormat {
  const isStakes = use === "stakes";
  return {
    id,
    title: isStakes ? "Stake labels (PDF)" : "Seed packet labels (PDF)",
    about: isStakes
      ? "One label for each planting: code, variety, kind, dates, lot."
      : "One label for each planting kept for seed, and a page on what the law may ask for.",
    mimeType: "application/pdf",
    extension: "pdf",
    what: isStakes ? "stake labels" : "packet labels",
    needs: "nothing",
    labels: use,
    ...(isStakes ? {} : { followsReading: true as const }),
    make: async (input, means) => {
      const { labelsPdf } = await import("../labels/labels-pdf.ts");
      return labelsPdf(input, use, means.labels, means.printedAt, await means.fonts());
    },
  };
}

/** The format with an id; a mistyped one is a bug. */
export function exportById(id: string): ExportFormat {
  const format = allExports.find((each) => each.id === id);
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
