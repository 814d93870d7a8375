/** Makes one of the files for others and hands it to the browser; machinery comes when asked for. */
import boldUrl from "@expo-google-fonts/noto-sans/700Bold/NotoSans_700Bold.ttf?url";
import regularUrl from "@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf?url";
import { type ExportFormat, formatFileName } from "../../core/files/all-exports.ts";
import type { LabelChoice } from "../../core/labels/label-pages.ts";
import type { PdfFonts } from "../../core/page/pdf-writer.ts";
import { downloadBytes } from "../form/download.ts";
import { checkedNow } from "../state/plan-actions.ts";
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

/** Makes and downloads the file of the layout on screen; gives its name. */
export async function makeFile(
  format: ExportFormat,
  dotsPerInch: number,
  labels: LabelChoice,
): Promise<string> {
  const checked = checkedNow();
  const now = new Date();
  const made = await format.make(checked, {
    printedAt: printedAt(now),
    stamp: now.toISOString().replace(/[-:]|\.\d+/g, ""),
    fonts: fetchFonts,
    labels,
    raster: (svg) => rasterOfSvg(svg, dotsPerInch),
  });
  const fileName = formatFileName(format, checked.plan, checked.layout);
  const bytes = typeof made === "string" ? new TextEncoder().encode(made) : new Uint8Array(made);
  downloadBytes(bytes, fileName, format.mimeType);
  return fileName;
}
