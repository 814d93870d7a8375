/** Every file Wideberth makes for others, by name: what it is, who it is for, what it needs. */
import type { LabelUse } from "../labels/label-facts.ts";
import type { Layout, Plan } from "../model/plan.ts";
import { compareFileName, exportFileName, plotMapFileName } from "../page/file-name.ts";
import { usualPaper } from "../page/paper.ts";
import { type ExportWords, exportWords, hindranceWords, labelWords } from "./export-words.ts";

export interface ExportFormat extends ExportWords {
  /** As `--format` has it. */
  readonly id: string;
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

const formats: readonly Omit<ExportFormat, keyof ExportWords>[] = [
  {
    id: "plot-map",
    followsReading: true,
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
    mimeType: "application/pdf",
    extension: "pdf",
    what: "isolation as grown",
    needs: "nothing",
  },
  {
    id: "sowing-list",
    mimeType: "application/pdf",
    extension: "pdf",
    what: "sowing list",
    needs: "nothing",
  },
  {
    id: "years",
    mimeType: "application/pdf",
    extension: "pdf",
    what: "years",
    needs: "nothing",
  },
  {
    id: "sowing-csv",
    mimeType: "text/csv",
    extension: "csv",
    what: "sowing list",
    needs: "nothing",
  },
  {
    id: "lots",
    mimeType: "text/csv",
    extension: "csv",
    what: "seed lots",
    needs: "nothing",
  },
  {
    id: "compare",
    mimeType: "application/pdf",
    extension: "pdf",
    what: "layouts compared",
    needs: "layouts",
  },
  {
    id: "svg",
    followsReading: true,
    mimeType: "image/svg+xml",
    extension: "svg",
    what: "drawing",
    needs: "nothing",
  },
  {
    id: "svg-page",
    followsReading: true,
    mimeType: "image/svg+xml",
    extension: "svg",
    what: "map page",
    needs: "nothing",
  },
  {
    id: "png",
    followsReading: true,
    mimeType: "image/png",
    extension: "png",
    what: "map page",
    needs: "canvas",
  },
  {
    id: "geojson",
    mimeType: "application/geo+json",
    extension: "geojson",
    what: "layout",
    needs: "position",
  },
  {
    id: "gpx",
    mimeType: "application/gpx+xml",
    extension: "gpx",
    what: "bed corners",
    needs: "position",
  },
  {
    id: "plots",
    mimeType: "text/csv",
    extension: "csv",
    what: "plots",
    needs: "nothing",
  },
  {
    id: "varieties",
    mimeType: "text/csv",
    extension: "csv",
    what: "seed list",
    needs: "nothing",
  },
  {
    id: "pairs",
    followsReading: true,
    mimeType: "text/csv",
    extension: "csv",
    what: "pairs",
    needs: "nothing",
  },
  {
    id: "calendar",
    mimeType: "text/calendar",
    extension: "ics",
    what: "season calendar",
    needs: "nothing",
  },
];

export const exportList: readonly ExportFormat[] = formats.map((format) => {
  const words = format.labels ? labelWords[format.labels] : exportWords.get(format.id);
  return { ...format, title: words?.title ?? format.id, about: words?.about ?? "" };
});

function labelFormat(id: string, use: LabelUse): Omit<ExportFormat, keyof ExportWords> {
  return {
    id,
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
    return hindranceWords.position;
  }
  if (format.needs === "layouts" && plan.layouts.length < 2) {
    return hindranceWords.layouts;
  }
  if (format.needs === "lots" && !plan.lots.some(({ state }) => state === "in stock")) {
    return hindranceWords.lots;
  }
  return format.needs === "canvas" && !hasCanvas ? hindranceWords.canvas : null;
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
