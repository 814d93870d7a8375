/**
 * Sheets of labels, millimetres. None of them is any maker's: they are plain sheets cut along the
 * lines printed on them, single strips, and whatever the grower has measured on stock of their own.
 */

import type { LengthUnit } from "../model/length.ts";

export interface LabelSize {
  readonly id: string;
  readonly title: string;
  readonly page: { readonly widthMm: number; readonly heightMm: number };
  readonly label: { readonly widthMm: number; readonly heightMm: number };
  readonly columns: number;
  readonly rows: number;
  /** Left and upper edge of the first label. */
  readonly left: number;
  readonly top: number;
  /** From the left edge of one label to that of the next, and from upper edge to upper edge. */
  readonly pitchX: number;
  readonly pitchY: number;
  /** Lines to cut along are printed. */
  readonly isCut: boolean;
}

const A4 = { widthMm: 210, heightMm: 297 };
const LETTER = { widthMm: 215.9, heightMm: 279.4 };
/** What a printer leaves white all round. */
const EDGE_MM = 7;

export const labelSizes: readonly LabelSize[] = [
  cutSheet("a4-small", "A4, 3 x 8 to cut", A4, 3, 8),
  cutSheet("a4-large", "A4, 2 x 5 to cut", A4, 2, 5),
  cutSheet("letter-small", "Letter, 3 x 8 to cut", LETTER, 3, 8),
  cutSheet("letter-large", "Letter, 2 x 5 to cut", LETTER, 2, 5),
  strip("strip-short", "Strips of 100 x 30 mm, one a page", 100, 30),
  strip("strip-long", "Strips of 150 x 25 mm, one a page", 150, 25),
];

/** The size offered first: stakes take little, a packet has more to say. */
export function usualLabelSize(unit: LengthUnit, isPacket: boolean): LabelSize {
  const id = `${unit === "ft" ? "letter" : "a4"}-${isPacket ? "large" : "small"}`;
  return labelSizes.find((size) => size.id === id) ?? (labelSizes[0] as LabelSize);
}

function cutSheet(
  id: string,
  title: string,
  page: LabelSize["page"],
  columns: number,
  rows: number,
): LabelSize {
  const widthMm = (page.widthMm - 2 * EDGE_MM) / columns;
  const heightMm = (page.heightMm - 2 * EDGE_MM) / rows;
  return {
    id,
    title,
    page,
    label: { widthMm, heightMm },
    columns,
    rows,
    left: EDGE_MM,
    top: EDGE_MM,
    pitchX: widthMm,
    pitchY: heightMm,
    isCut: true,
  };
}

function strip(id: string, title: string, widthMm: number, heightMm: number): LabelSize {
  const label = { widthMm, heightMm };
  return {
    id,
    title,
    page: label,
    label,
    columns: 1,
    rows: 1,
    left: 0,
    top: 0,
    pitchX: widthMm,
    pitchY: heightMm,
    isCut: false,
  };
}

/** What `ownLabelSize` reads, as shown to the grower. */
export const OWN_SIZE_EXAMPLE = "210x297 63x38 3x7 7.5x15 66x38.1";

/**
 * A sheet the grower measured: page, label, columns x rows, left x top edge of the first label and
 * pitch, in mm, as in OWN_SIZE_EXAMPLE. Null when it cannot be read or does not fit its page.
 */
export function ownLabelSize(text: string): LabelSize | null {
  const pairs = text
    .trim()
    .replace(/,/g, ".")
    .split(/\s+/)
    .map((pair) => /^(\d+(?:\.\d+)?)[x×](\d+(?:\.\d+)?)$/i.exec(pair))
    .map((match) => (match ? ([Number(match[1]), Number(match[2])] as const) : null));
  const [page, label, count, edge, pitch] = pairs;
  if (!page || !label || !count || !edge || !pitch || pairs.length !== 5) return null;
  const size: LabelSize = {
    id: "own",
    title: "measured by hand",
    page: { widthMm: page[0], heightMm: page[1] },
    label: { widthMm: label[0], heightMm: label[1] },
    columns: count[0],
    rows: count[1],
    left: edge[0],
    top: edge[1],
    pitchX: pitch[0],
    pitchY: pitch[1],
    isCut: false,
  };
  return isSound(size) ? size : null;
}

/** Whether labels lie on their page, none over another; to a tenth of a millimetre. */
export function isSound(size: LabelSize): boolean {
  const { page, label, columns, rows, left, top, pitchX, pitchY } = size;
  const isCount = (value: number) => Number.isInteger(value) && value >= 1 && value <= 100;
  return (
    isCount(columns) &&
    isCount(rows) &&
    label.widthMm >= 20 &&
    label.heightMm >= 10 &&
    page.widthMm <= 1000 &&
    page.heightMm <= 1000 &&
    (columns === 1 || pitchX >= label.widthMm - 0.1) &&
    (rows === 1 || pitchY >= label.heightMm - 0.1) &&
    left + (columns - 1) * pitchX + label.widthMm <= page.widthMm + 0.1 &&
    top + (rows - 1) * pitchY + label.heightMm <= page.heightMm + 0.1
  );
}
