/**
 * Border rows of maize: rows of the pollen parent around the seed block, which let regulations
 * accept a shorter distance. Three published schemes, never mixed.
 */
import { METRES_PER_FOOT } from "../model/length.ts";

/** `small`: up to 20 acres (8 ha); `large`: more. A garden is always small. */
export type FieldSize = "small" | "large";

export interface BorderRowTable {
  readonly id: string;
  readonly title: string;
  /** Id of a source (sources.ts). */
  readonly source: string;
  readonly condition: string;
  /** [feet, rows in a small field, rows in a large one]; null: not printed or not permitted. */
  readonly rows: readonly (readonly [number, number | null, number | null])[];
}

export const cfrBorderRows: BorderRowTable = {
  id: "cfr-footnote-12",
  title: "7 CFR 201.76 footnote 12",
  source: "cfr-201-76",
  condition: "hybrid or open-pollinated corn; the other maize has the same colour and texture",
  rows: [
    [410, 0, 0],
    [370, 2, 1],
    [330, 4, 2],
    [290, 6, 3],
    [245, 8, 4],
    [205, 10, 5],
    [165, 12, 6],
    [125, 14, 7],
    [85, 16, 8],
    [0, null, 10],
  ],
};

/** The last row of the Washington table prints "less than 45 ft" for 10 rows; it is left out. */
export const washingtonBorderRows: BorderRowTable = {
  id: "wac-16-302-295",
  title: "WAC 16-302-295",
  source: "wac-16-302-295",
  condition: "hybrid corn; the rows shed pollen while silks are out and stand within 33 ft",
  rows: [
    [415, 0, 0],
    [395, 1, null],
    [375, 2, 1],
    [355, 3, null],
    [330, 4, 2],
    [310, 5, null],
    [290, 6, 3],
    [270, 7, null],
    [250, 8, 4],
    [230, 9, null],
    [210, 10, 5],
    [185, 11, null],
    [165, 12, 6],
    [145, 13, null],
    [125, 14, 7],
    [105, 15, null],
    [85, 16, 8],
    [45, null, 9],
  ],
};

/** Least distance (metres) a table permits with so many border rows. */
export function distanceWithBorderRows(
  table: BorderRowTable,
  borderRows: number,
  size: FieldSize = "small",
): number {
  const permitted = table.rows.filter((row) => {
    const needed = rowsNeeded(row, size);
    return needed !== null && needed <= borderRows;
  });
  return Math.min(...permitted.map(([feet]) => feet)) * METRES_PER_FOOT;
}

function rowsNeeded([, small, large]: BorderRowTable["rows"][number], size: FieldSize) {
  return size === "small" ? small : large;
}

const SWEET_CORN = {
  baseFeet: 660,
  smallFieldAcres: 10,
  rowsOfSmallField: 4,
  acresPerStep: 4,
  acresCounted: 40,
  feetPerStep: 15,
  rowsCounted: 16,
  feetPerRow: 40,
} as const;

/**
 * Distance (metres) for sweet corn by 7 CFR 201.76 footnote 14: 660 ft, and four border rows in
 * fields of 10 acres or less; 15 ft less for each 4 acres of field up to 40, and 40 ft less for
 * each further border row up to 16. Rows count from the fifth in every field and 16 is read as
 * the number of all rows: the careful readings. Null when a small field lacks its four rows.
 */
export function sweetCornDistance(acres: number, borderRows: number): number | null {
  if (acres <= SWEET_CORN.smallFieldAcres && borderRows < SWEET_CORN.rowsOfSmallField) return null;
  const steps = Math.floor(Math.min(acres, SWEET_CORN.acresCounted) / SWEET_CORN.acresPerStep);
  const rows = Math.min(borderRows, SWEET_CORN.rowsCounted) - SWEET_CORN.rowsOfSmallField;
  const feet =
    SWEET_CORN.baseFeet -
    steps * SWEET_CORN.feetPerStep -
    Math.max(0, rows) * SWEET_CORN.feetPerRow;
  return feet * METRES_PER_FOOT;
}
