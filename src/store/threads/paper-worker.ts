/**
 * Makes paper and files on a thread of its own, so that the window stays live: pages to be looked
 * at, PDFs, and every file for others. Gets one request, sends progress and one answer. The type
 * is fetched here, and only when something is made of it.
 */
import boldUrl from "@expo-google-fonts/noto-sans/700Bold/NotoSans_700Bold.ttf?url";
import regularUrl from "@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf?url";
import { type CheckedLayout, checkLayout, checkLayouts } from "../../core/checks/checked-layout.ts";
import { joinGroundReckoning } from "../../core/checks/ground-checks.ts";
import { joinSeedReckoning } from "../../core/checks/seed-lots.ts";
import { type ExportMeans, allExports } from "../../core/files/all-exports.ts";
import { exportById, formatFileName } from "../../core/files/export-list.ts";
import { groundReckoning } from "../../core/ground/ground-reckoning.ts";
import type { Plan } from "../../core/model/plan.ts";
import { compareFileName } from "../../core/page/file-name.ts";
import type { PdfFonts } from "../../core/page/pdf-writer.ts";
import { checkAsGrown } from "../../core/record/as-grown.ts";
import { seedReckoning } from "../../core/shelf/seed-reckoning.ts";
import type { PaperAnswer, PaperFile, PaperJob, PaperProgress, PaperRequest } from "./paper-job.ts";

joinSeedReckoning(seedReckoning);
joinGroundReckoning(groundReckoning);

/** Between messages the thread that cancels is heard by ending this one: no turn is needed. */
let done = 0;
let total = 0;

function step(): Promise<void> {
  done += 1;
  const progress: PaperProgress = { kind: "progress", done: Math.min(done, total), total };
  postMessage(progress);
  return Promise.resolve();
}

async function fetchFont(url: string): Promise<Uint8Array> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`The type could not be loaded (${answer.status})`);
  return new Uint8Array(await answer.arrayBuffer());
}

async function fetchFonts(extra: Uint8Array | null): Promise<PdfFonts> {
  const [regular, bold] = await Promise.all([fetchFont(regularUrl), fetchFont(boldUrl)]);
  return extra ? { regular, bold, extra } : { regular, bold };
}

async function answerTo(request: PaperRequest): Promise<PaperAnswer> {
  const { plan, layoutId, grownOn, job } = request;
  if (job.what === "compare") return compared(plan, job, request);
  const input =
    grownOn === null ? checkLayout(plan, layoutId) : checkAsGrown(plan, layoutId, grownOn);
  if (job.what === "file") return file(input, job, request);
  if (job.what === "face") return face(input, job.bytes);
  return printed(input, job, request);
}

async function printed(
  input: CheckedLayout,
  { parts, settings, wants }: Extract<PaperJob, { readonly what: "print" }>,
  { printedAt, extraFace }: PaperRequest,
): Promise<PaperAnswer> {
  const [{ planRemarks, printedPart, printedPdf }, { planSheets }, { pdfWriter }, { svgPage }] =
    await Promise.all([
      import("../../core/files/print-set.ts"),
      import("../../core/map/page-plan.ts"),
      import("../../core/page/pdf-writer.ts"),
      import("../../core/page/svg-writer.ts"),
    ]);
  const fonts = await fetchFonts(extraFace);
  const { ruler } = pdfWriter("", "", fonts);
  const { plan, layout } = input;
  const sheets = parts.includes("map") ? planSheets(plan, layout, settings, settings.ratio) : null;
  total = parts.length + (sheets?.sheets.length ?? 0) + 1;
  const made = [];
  for (const id of parts) {
    made.push(await printedPart(id, input, { ...settings, printedAt }, ruler, step));
  }
  const remarks = planRemarks(input, ruler);
  if (wants === "pages") {
    return {
      kind: "answer",
      remarks,
      parts: made.map(({ id, pages, remarks: own }) => ({
        id,
        remarks: own,
        pages: pages.map((page) => ({ name: page.name, svg: svgPage(page, page.name, ruler) })),
      })),
      files: [],
    };
  }
  total += made.reduce((sum, { pages }) => sum + pages.length, 0);
  const files: PaperFile[] = [];
  for (const { name, title, ids } of wants) {
    const pages = made.filter(({ id }) => ids.includes(id)).flatMap((part) => part.pages);
    const bytes = await printedPdf(input, { title, pages }, printedAt, fonts, step);
    files.push({ name, bytes, pages: pages.length, mimeType: "application/pdf" });
  }
  return {
    kind: "answer",
    remarks: [...remarks, ...made.flatMap((part) => part.remarks)],
    parts: [],
    files,
  };
}

async function file(
  input: CheckedLayout,
  { format: id, labels, leftOut, lots, hasMark }: Extract<PaperJob, { readonly what: "file" }>,
  { printedAt, stamp, extraFace }: PaperRequest,
): Promise<PaperAnswer> {
  const format = exportById(id);
  const maker = allExports.find((each) => each.id === id);
  if (!maker) throw new Error(`Nothing makes the file "${id}".`);
  const remarks: string[] = [];
  const means: ExportMeans = {
    printedAt,
    stamp,
    fonts: () => fetchFonts(extraFace),
    labels,
    leftOut: new Set(leftOut),
    ...(lots ? { lots: new Set(lots) } : {}),
    remark: (words) => remarks.push(words),
    // Dots are made where there is a canvas that draws SVG: in the window, of what comes back.
    raster: (svg) => Promise.resolve(new TextEncoder().encode(svg)),
  };
  const made = await maker.make(input, means);
  const mark = hasMark ? "\uFEFF" : "";
  const bytes = typeof made === "string" ? new TextEncoder().encode(`${mark}${made}`) : made;
  const name = formatFileName(format, input.plan, input.layout);
  return {
    kind: "answer",
    remarks,
    parts: [],
    files: [{ name, bytes, pages: null, mimeType: format.mimeType }],
  };
}

async function face(input: CheckedLayout, bytes: Uint8Array): Promise<PaperAnswer> {
  const [{ tryFace }, { unsetNames, unsetWords }, { pdfWriter }] = await Promise.all([
    import("../../core/page/face-check.ts"),
    import("../../core/map/unset-names.ts"),
    import("../../core/page/pdf-writer.ts"),
  ]);
  const fonts = await fetchFonts(null);
  const lacking = unsetNames(input, pdfWriter("", "", fonts).ruler);
  const left = unsetWords(await tryFace(bytes, fonts, lacking));
  return { kind: "answer", remarks: left === "" ? [] : [left], parts: [], files: [] };
}

async function compared(
  plan: Plan,
  { layoutIds, paper, isOverlaid }: Extract<PaperJob, { readonly what: "compare" }>,
  { printedAt, extraFace }: PaperRequest,
): Promise<PaperAnswer> {
  const { comparePdf } = await import("../../core/compare/compare-pdf.ts");
  const layouts = layoutIds.flatMap((id) => plan.layouts.find((each) => each.id === id) ?? []);
  const print = { paper, isOverlaid, printedAt };
  const { bytes, pages } = await comparePdf(
    checkLayouts(plan, layouts),
    print,
    await fetchFonts(extraFace),
    (at, of) => {
      const progress: PaperProgress = { kind: "progress", done: at, total: of };
      postMessage(progress);
    },
  );
  const name = compareFileName(plan, layouts);
  return {
    kind: "answer",
    remarks: [],
    parts: [],
    files: [{ name, bytes, pages, mimeType: "application/pdf" }],
  };
}

addEventListener("message", ({ data }: MessageEvent<PaperRequest>) => {
  void answerTo(data)
    .catch((fault: unknown): PaperAnswer => ({
      kind: "failed",
      reason: fault instanceof Error ? fault.message : String(fault),
    }))
    .then((answer) => postMessage(answer));
});
