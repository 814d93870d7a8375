/**
 * Sheets of labels, millimetres. None of them is any maker's: they are plain sheets cut along the
 * lines printed on them, single strips, and whatever the grower has measured on stock of their own.
 */
import type { LengthUnit } from "../model/length.ts";
import type { Box } from "../page/scene.ts";

/**
 * How a label is used: flat; folded over its upper edge, the words on both halves; or wrapped round
 * a stake and stuck to itself, the words on both ends.
 */
export const labelFolds = ["flat", "over", "round"] as const;
export type LabelFold = (typeof labelFolds)[number];

/** Of a label wrapped round a stake: room in its middle that lies on the stake, mm. */
const STAKE_MM = 30;

export interface LabelSize {
  readonly id: string;
  readonly title: string;
  readonly page: { readonly widthMm: number; readonly heightMm: number };
  /** Of the whole label, before it is folded. */
  readonly label: { readonly widthMm: number; readonly heightMm: number };
  readonly columns: number;
  readonly rows: number;
  /** Left and upper edge of the first label. */
  readonly left: number;
  readonly top: number;
  /** From the left edge of one label to that of the next, and from upper edge to upper edge. */
  readonly pitchX: number;
  readonly pitchY: number;
  readonly fold: LabelFold;
  /** Lines to cut along are printed. */
  readonly isCut: boolean;
}

const A4 = { widthMm: 210, heightMm: 297 };
const LETTER = { widthMm: 215.9, heightMm: 279.4 };
/** What a printer leaves white all round. */
const EDGE_MM = 7;

export const labelSizes: readonly LabelSize[] = [
  cutSheet("a4-small", "A4, 3 x 8 to cut", A4, [3, 8]),
  cutSheet("a4-large", "A4, 2 x 5 to cut", A4, [2, 5]),
  cutSheet("a4-fold", "A4, 3 x 4 to cut and fold over", A4, [3, 4], "over"),
  cutSheet("a4-wrap", "A4, 1 x 9 to cut and wrap round a stake", A4, [1, 9], "round"),
  cutSheet("letter-small", "Letter, 3 x 8 to cut", LETTER, [3, 8]),
  cutSheet("letter-large", "Letter, 2 x 5 to cut", LETTER, [2, 5]),
  cutSheet("letter-fold", "Letter, 3 x 4 to cut and fold over", LETTER, [3, 4], "over"),
  cutSheet("letter-wrap", "Letter, 1 x 9 to cut and wrap round a stake", LETTER, [1, 9], "round"),
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
  [columns, rows]: readonly [number, number],
  fold: LabelFold = "flat",
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
    fold,
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
    fold: "flat",
    isCut: false,
  };
}

export function labelsOnSheet({ columns, rows }: LabelSize): number {
  return columns * rows;
}

/** Where the label of a place, from 0, lies on its sheet. */
export function labelBoxOf(size: LabelSize, place: number): Box {
  const { left, top, pitchX, pitchY, columns, label } = size;
  return {
    left: left + (place % columns) * pitchX,
    top: top + Math.floor(place / columns) * pitchY,
    width: label.widthMm,
    height: label.heightMm,
  };
}

/** One side of a label, as it is looked at. */
export interface LabelFace {
  readonly box: Box;
  /** Printed upside down, so that it stands upright once folded. */
  readonly isTurned: boolean;
}

/** The sides of a label: both halves of one that is folded, both ends of one that is wrapped. */
export function labelFaces(box: Box, fold: LabelFold): readonly LabelFace[] {
  if (fold === "flat") return [{ box, isTurned: false }];
  if (fold === "over") {
    const height = box.height / 2;
    return [
      { box: { ...box, height }, isTurned: true },
      { box: { ...box, top: box.top + height, height }, isTurned: false },
    ];
  }
  const width = (box.width - STAKE_MM) / 2;
  return [
    { box: { ...box, width }, isTurned: false },
    { box: { ...box, left: box.left + width + STAKE_MM, width }, isTurned: false },
  ];
}
