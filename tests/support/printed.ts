/** Makes a plot map and looks at it as a printer would: rasterised at ten pixels to the millimetre. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { CheckedLayout } from "../../src/core/checks/checked-layout.ts";
import type { PlotMapSettings } from "../../src/core/map/map-text.ts";
import { type PlotMap, plotMapPages, plotMapPdf } from "../../src/core/paper-set/plot-map.ts";
import { pdfWriter } from "../../src/core/page/pdf-writer.ts";
import type { Box, Page } from "../../src/core/page/scene.ts";

const fontFile = (name: string) =>
  new Uint8Array(
    readFileSync(
      new URL(`../../node_modules/@expo-google-fonts/noto-sans/${name}.ttf`, import.meta.url),
    ),
  );

export const fonts = {
  regular: fontFile("400Regular/NotoSans_400Regular"),
  bold: fontFile("700Bold/NotoSans_700Bold"),
};

export const PX_PER_MM = 10;

export const a4: PlotMapSettings = {
  paper: "A4",
  orientation: "landscape",
  ratio: 200,
  printedAt: "2027-03-02 09:40",
};

export function print(input: CheckedLayout, settings: PlotMapSettings): Promise<PlotMap> {
  return plotMapPdf(input, settings, fonts);
}

/** The same pages as marks, before they become a file. */
export function scenes(input: CheckedLayout, settings: PlotMapSettings): readonly Page[] {
  const { ruler } = pdfWriter("", "", fonts);
  return plotMapPages(input, settings, ruler).parts.flatMap((part) => part().pages);
}

/** Grey pixels of one page, 0 black to 255 white. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly at: (xPx: number, yPx: number) => number;
}

function withFile<T>(bytes: Uint8Array, look: (path: string, folder: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), "plot-map-"));
  try {
    const path = join(folder, "map.pdf");
    writeFileSync(path, bytes);
    return look(path, folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export function rasterise(bytes: Uint8Array, page: number, dotsPerInch = 254): Raster {
  return withFile(bytes, (path, folder) => {
    const out = join(folder, "page");
    const pages = ["-f", String(page), "-l", String(page), "-singlefile"];
    execFileSync("pdftoppm", ["-r", String(dotsPerInch), "-gray", ...pages, path, out]);
    return readPgm(readFileSync(`${out}.pgm`));
  });
}

/** Portable graymap, binary, 8 bits. */
function readPgm(file: Uint8Array): Raster {
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(
    new TextDecoder("latin1").decode(file.slice(0, 64)),
  );
  if (!head) throw new Error("no graymap");
  const [width, height] = [Number(head[1]), Number(head[2])];
  const start = head[0].length;
  return { width, height, at: (x, y) => file[start + y * width + x] ?? 255 };
}

/** Text of the pages, in reading order. */
export function textOf(bytes: Uint8Array, ...options: readonly string[]): string {
  return withFile(bytes, (path) =>
    execFileSync("pdftotext", [...options, "-enc", "UTF-8", path, "-"], { encoding: "utf8" }),
  );
}

/** Share of dark pixels in a box given in mm. */
export function darkShare(raster: Raster, { left, top, width, height }: Box): number {
  let dark = 0;
  let all = 0;
  for (let y = Math.ceil(top * PX_PER_MM); y < (top + height) * PX_PER_MM; y += 1) {
    for (let x = Math.ceil(left * PX_PER_MM); x < (left + width) * PX_PER_MM; x += 1) {
      all += 1;
      if (raster.at(x, y) < 128) dark += 1;
    }
  }
  return dark / all;
}

/** Middles of the dark runs along a row or column of pixels, between two places in mm. */
export function darkPlaces(
  raster: Raster,
  axis: "x" | "y",
  acrossMm: number,
  fromMm: number,
  toMm: number,
): readonly number[] {
  const across = Math.round(acrossMm * PX_PER_MM);
  const places: number[] = [];
  let start: number | null = null;
  for (let along = Math.round(fromMm * PX_PER_MM); along <= toMm * PX_PER_MM; along += 1) {
    const isDark = (axis === "x" ? raster.at(along, across) : raster.at(across, along)) < 128;
    if (isDark) start ??= along;
    else if (start !== null) {
      places.push((start + along - 1) / 2);
      start = null;
    }
  }
  return places;
}
