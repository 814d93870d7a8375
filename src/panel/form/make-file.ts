/** Makes one of the files for others and hands it to the browser; machinery comes when asked for. */
import boldUrl from "@expo-google-fonts/noto-sans/700Bold/NotoSans_700Bold.ttf?url";
import regularUrl from "@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf?url";
import { allExports } from "../../core/files/all-exports.ts";
import { type ExportFormat, formatFileName } from "../../core/files/export-list.ts";
import type { LabelChoice } from "../../core/labels/label-pages.ts";
import { usualLabelSize } from "../../core/labels/label-sizes.ts";
import type { PdfFonts } from "../../core/page/pdf-writer.ts";
import { storedOffset } from "../../store/window/label-memory.ts";
import { downloadBytes } from "./download.ts";
import { checkedNow, readNow } from "../state/plan-actions.ts";
import { rasterOfSvg } from "./raster-of-svg.ts";

async function fetchFont(url: string): Promise<Uint8Array> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`The font for the map could not be loaded (${answer.status})`);
  return new Uint8Array(await answer.arrayBuffer());
}

/** The two type files of everything printed. */
export async function fetchFonts(): Promise<PdfFonts> {
  const [regular, bold] = await Promise.all([fetchFont(regularUrl), fetchFont(boldUrl)]);
  return { regular, bold };
}

/** Local date and time as `2027-02-14 10:02`. */
export function printedAt(now: Date): string {
  const two = (value: number) => String(value).padStart(2, "0");
  const day = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  return `${day} ${two(now.getHours())}:${two(now.getMinutes())}`;
}

/** What a dialog has asked about a file; what is left out is as usual. */
export interface FileChoice {
  readonly dotsPerInch?: number;
  readonly labels?: LabelChoice;
  /** Jobs that stay out of the calendar. */
  readonly leftOut?: ReadonlySet<string>;
  /** Ids of the lots wanted; left out: all. */
  readonly lots?: ReadonlySet<string>;
  /** Begins with the mark that tells spreadsheets the text is UTF-8. */
  readonly hasMark?: boolean;
}

const USUAL_DOTS = 150;

/** Makes and downloads the file of the kept layout on screen; gives its name. */
export async function makeFile(format: ExportFormat, choice: FileChoice = {}): Promise<string> {
  const checked = format.followsReading === true ? readNow() : checkedNow();
  const { plan, layout } = checked;
  const now = new Date();
  const maker = allExports.find(({ id }) => id === format.id);
  if (!maker) throw new Error(`Nothing makes the file "${format.id}".`);
  const made = await maker.make(checked, {
    printedAt: printedAt(now),
    stamp: now.toISOString().replace(/[-:]|\.\d+/g, ""),
    fonts: fetchFonts,
    labels: choice.labels ?? usualLabels(plan.units, format.labels !== "stakes"),
    leftOut: choice.leftOut ?? new Set(),
    ...(choice.lots ? { lots: choice.lots } : {}),
    raster: (svg) => rasterOfSvg(svg, choice.dotsPerInch ?? USUAL_DOTS),
  });
  const fileName = formatFileName(format, plan, layout);
  const mark = choice.hasMark === true ? "\uFEFF" : "";
  const bytes =
    typeof made === "string" ? new TextEncoder().encode(`${mark}${made}`) : new Uint8Array(made);
  downloadBytes(bytes, fileName, format.mimeType);
  return fileName;
}

/** Labels as they are until somebody chooses otherwise. */
export function usualLabels(units: "m" | "ft", isPackets: boolean): LabelChoice {
  const offset = storedOffset.load();
  return {
    size: usualLabelSize(units, isPackets),
    startAt: 1,
    hasQr: false,
    treatment: "",
    offset,
  };
}
