/** Every file Wideberth makes for others, each with what makes it. */
import { type CheckedLayout, checkLayouts } from "../checks/checked-layout.ts";
import type { LabelChoice } from "../labels/label-pages.ts";
import type { LabelUse } from "../labels/label-facts.ts";
import { usualPaper } from "../page/paper.ts";
import type { PdfFonts } from "../page/pdf-writer.ts";
import { type ExportFormat, exportList } from "./export-list.ts";
import { hindranceWords } from "./export-words.ts";

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
  /** Told what to look at before the file is used. */
  readonly remark?: (words: string) => void;
  /** Turns an SVG file into a PNG file; null where there is no canvas. */
  readonly raster: ((svg: string) => Promise<Uint8Array>) | null;
}

type Made = string | Uint8Array;
type Maker = (input: CheckedLayout, means: ExportMeans) => Promise<Made>;

export interface MadeFormat extends ExportFormat {
  readonly make: Maker;
}

// Each format's machinery is loaded when a file is made.
const makers: ReadonlyMap<string, Maker> = new Map<string, Maker>([
  [
    "plot-map",
    async (input, means) => {
      const { suggestedMap } = await import("../paper-set/suggested-map.ts");
      return suggestedMap(input, means.printedAt, await means.fonts());
    },
  ],
  [
    "lot-isolation",
    async (input, means) => {
      const { lotIsolationPdf } = await import("../paper-set/lot-isolation-pages.ts");
      return lotIsolationPdf(input, means.lots ?? null, means.printedAt, await means.fonts());
    },
  ],
  [
    "sowing-list",
    async (input, means) => {
      const { sowingListPdf } = await import("../paper-set/sowing-pages.ts");
      return sowingListPdf(input, means.printedAt, await means.fonts());
    },
  ],
  [
    "years",
    async (input, means) => {
      const { yearsPdf } = await import("../paper-set/years-pages.ts");
      return yearsPdf(input, means.printedAt, await means.fonts());
    },
  ],
  ["sowing-csv", async (input) => (await import("./sowing-csv.ts")).sowingCsv(input)],
  ["lots", async ({ plan, book }) => (await import("../exchange/lots-csv.ts")).lotsCsv(plan, book)],
  [
    "compare",
    async (checked, { printedAt, fonts }) => {
      const { comparePdf } = await import("../compare/compare-pdf.ts");
      const { plan, layout } = checked;
      const others = plan.layouts.filter(({ id }) => id !== layout.id);
      const compared = [checked, ...checkLayouts(plan, others)];
      const print = { paper: usualPaper(plan.units), isOverlaid: false, printedAt };
      return (await comparePdf(compared, print, await fonts())).bytes;
    },
  ],
  [
    "svg",
    async (input, means) => {
      const { drawingSvg } = await import("../paper-set/drawing-svg.ts");
      return drawingSvg(input, means.printedAt, await means.fonts());
    },
  ],
  [
    "svg-page",
    async (input, means) => {
      const { pageSvg } = await import("../paper-set/drawing-svg.ts");
      return pageSvg(input, means.printedAt, await means.fonts());
    },
  ],
  [
    "png",
    async (input, means) => {
      if (!means.raster) throw new RangeError(hindranceWords.inBrowser);
      const { pageSvg } = await import("../paper-set/drawing-svg.ts");
      return means.raster(await pageSvg(input, means.printedAt, await means.fonts()));
    },
  ],
  ["geojson", async (input) => (await import("../exchange/plan-geojson.ts")).planGeojson(input)],
  ["gpx", async ({ plan, layout }) => (await import("./gpx.ts")).bedCornersGpx(plan, layout)],
  ["plots", async (input) => (await import("./plots-csv.ts")).plotsCsv(input)],
  [
    "varieties",
    async ({ plan, book }) =>
      (await import("../exchange/varieties-csv.ts")).varietiesCsv(plan, book),
  ],
  ["pairs", async (input) => (await import("./pairs-csv.ts")).pairsCsv(input)],
  [
    "calendar",
    async (checked, { stamp, leftOut }) => {
      const [{ icalendar }, { seasonJobs }] = await Promise.all([
        import("./icalendar.ts"),
        import("../fieldwork/season-calendar.ts"),
      ]);
      const jobs = seasonJobs(checked).filter(({ job }) => leftOut?.has(job) !== true);
      return icalendar(checked.plan, checked.layout, jobs, stamp);
    },
  ],
]);

function labelMaker(use: LabelUse): Maker {
  return async (input, means) => {
    const { labelsPdf } = await import("../labels/labels-pdf.ts");
    const fonts = await means.fonts();
    const { bytes, remarks } = await labelsPdf(input, use, means.labels, means.printedAt, fonts);
    remarks.forEach((words) => means.remark?.(words));
    return bytes;
  };
}

export const allExports: readonly MadeFormat[] = exportList.map((format) => {
  const make = format.labels ? labelMaker(format.labels) : makers.get(format.id);
  if (!make) throw new Error(`Nothing makes the file "${format.id}".`);
  return { ...format, make };
});
