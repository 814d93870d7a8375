/** Paper sheets a plot map is printed on. Sizes are ISO 216 and ANSI, millimetres. */
import type { LengthUnit } from "../model/length.ts";

export const paperNames = ["A4", "Letter", "A3", "A5", "Legal", "Tabloid"] as const;
export type PaperName = (typeof paperNames)[number];

export const orientations = ["portrait", "landscape"] as const;
export type Orientation = (typeof orientations)[number];

/** The paper offered first for plans in a unit. */
export function usualPaper(unit: LengthUnit): PaperName {
  return unit === "ft" ? "Letter" : "A4";
}

export const MM_PER_INCH = 25.4;

/** Width and height, short side first. */
const UPRIGHT_MM: Readonly<Record<PaperName, readonly [number, number]>> = {
  A3: [297, 420],
  A4: [210, 297],
  A5: [148, 210],
  Letter: [8.5 * MM_PER_INCH, 11 * MM_PER_INCH],
  Legal: [8.5 * MM_PER_INCH, 14 * MM_PER_INCH],
  Tabloid: [11 * MM_PER_INCH, 17 * MM_PER_INCH],
};

export interface PaperSize {
  readonly widthMm: number;
  readonly heightMm: number;
}

export function paperSize(paper: PaperName, orientation: Orientation): PaperSize {
  const [short, long] = UPRIGHT_MM[paper];
  return orientation === "portrait"
    ? { widthMm: short, heightMm: long }
    : { widthMm: long, heightMm: short };
}
