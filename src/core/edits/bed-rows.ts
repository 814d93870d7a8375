/** Rows of equal beds from one set of numbers, with codes by a scheme. */
import { shiftOnSheet } from "../geometry/turned-bounds.ts";
import type { Bed, Layout, Plan } from "../model/plan.ts";
import { codeAfter, firstFreeCode, nextBlockCode } from "../beds/code-series.ts";
import { drawnIds, idAfter, nextId } from "./edit.ts";

/** Beds that one command may draw. */
export const BED_ROWS_MOST = 1000;

export const bedDirections = ["right", "left", "far", "near"] as const;
/** Where the second bed lies from the first, seen along the beds: beside it, or beyond its end. */
export type BedDirection = (typeof bedDirections)[number];

export interface BedRows {
  /** Beds in each row. */
  readonly count: number;
  readonly rows: number;
  readonly widthM: number;
  readonly lengthM: number;
  /** Between the beds of a row, and between rows, metres. */
  readonly pathM: number;
  readonly rowPathM: number;
  /** Degrees clockwise. */
  readonly turnDeg: number;
  /** Middle of the first bed, metres. */
  readonly x: number;
  readonly y: number;
  readonly direction: BedDirection;
  readonly firstCode: string;
  /** `series`: one series through all rows; `rows`: a letter for each row. */
  readonly scheme: "series" | "rows";
  /** Every second row is numbered from its other end: the order of walking there and back. */
  readonly isThereAndBack: boolean;
}

/** Where bed `place` of row `row` lies from the first, across and along the beds, metres. */
function offsetOf(rows: BedRows, row: number, place: number): readonly [number, number] {
  const across = rows.widthM + (isSideBySide(rows) ? rows.pathM : rows.rowPathM);
  const along = rows.lengthM + (isSideBySide(rows) ? rows.rowPathM : rows.pathM);
  const sign = rows.direction === "left" || rows.direction === "near" ? -1 : 1;
  return isSideBySide(rows)
    ? [place * sign * across, row * along]
    : [row * across, place * sign * along];
}

function isSideBySide({ direction }: BedRows): boolean {
  return direction === "right" || direction === "left";
}

/** The beds, in the order of their codes; ids and codes are new to the layout. */
export function bedsInRows(plan: Plan, layout: Layout, rows: BedRows): readonly Bed[] {
  const taken = new Set([...layout.beds, ...layout.plantings].map(({ code }) => code));
  const ids = new Set(drawnIds(plan, layout));
  let id = "";
  const beds: Bed[] = [];
  let rowCode = rows.firstCode;
  let code: string | null = null;
  for (let row = 0; row < rows.rows; row += 1) {
    if (rows.scheme === "rows") {
      if (row > 0) rowCode = nextBlockCode(rowCode);
      code = null;
    }
    for (let number = 0; number < rows.count; number += 1) {
      const isBack = rows.isThereAndBack && row % 2 === 1;
      const place = isBack ? rows.count - 1 - number : number;
      code = code === null ? firstFreeCode(rowCode, taken) : codeAfter(code, taken);
      taken.add(code);
      // The highest id in use is looked for once; from then on it is the last one given.
      id = id === "" ? nextId("bed-", ids) : idAfter("bed-", id, ids);
      const [across, along] = offsetOf(rows, row, place);
      const shift = shiftOnSheet(across, along, rows.turnDeg);
      const { widthM, lengthM, turnDeg } = rows;
      beds.push({
        id,
        code,
        outline: {
          shape: "rectangle",
          x: rows.x + shift.x,
          y: rows.y + shift.y,
          widthM,
          lengthM,
          turnDeg,
        },
      });
    }
  }
  return beds;
}

/** `B08 to B19`, with all codes when they are few: what the rows will be called. */
export function codesInWords(codes: readonly string[]): string {
  const first = codes[0] ?? "";
  const last = codes.at(-1) ?? "";
  return codes.length <= 4 ? codes.join(", ") : `${first}, ${codes[1] ?? ""} ... ${last}`;
}
