/** Rows of equal beds from one set of numbers, with codes by a scheme. */
import type { Point } from "../geometry/point.ts";
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
  /** After every so many beds of a row a path of its own width divides blocks; left out: one block. */
  readonly blockOf?: number | undefined;
  /** Between blocks, metres. */
  readonly blockPathM?: number | undefined;
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
  const wider = blocksBefore(rows, place) * ((rows.blockPathM ?? rows.pathM) - rows.pathM);
  return isSideBySide(rows)
    ? [sign * (place * across + wider), row * along]
    : [row * across, sign * (place * along + wider)];
}

/** Whole blocks of a row that lie before a bed. */
function blocksBefore({ blockOf }: BedRows, place: number): number {
  return blockOf === undefined || blockOf < 1 ? 0 : Math.floor(place / blockOf);
}

/** Middle of the first bed of another such block beside this one, a path between rows away, metres. */
export function blockBeside(rows: BedRows): Point {
  const gapM = rows.blockPathM ?? rows.rowPathM;
  const [across] = isSideBySide(rows)
    ? offsetOf(rows, 0, rows.count - 1)
    : offsetOf(rows, rows.rows - 1, 0);
  const away = (across < 0 || rows.direction === "left" ? -1 : 1) * (rows.widthM + gapM);
  const shift = shiftOnSheet(across + away, 0, rows.turnDeg);
  const centimetres = (metres: number) => Math.round(metres * 100) / 100;
  return { x: centimetres(rows.x + shift.x), y: centimetres(rows.y + shift.y) };
}

/** What a place of a bed is given for: its middle, or the near left corner, seen along the bed. */
export type BedAnchor = "corner" | "middle";

interface AnchoredBed {
  readonly x: number;
  readonly y: number;
  readonly widthM: number;
  readonly lengthM: number;
  readonly turnDeg: number;
}

/** The middle of a bed whose x and y are those of its anchor, metres. */
export function middleOf(bed: AnchoredBed, anchor: BedAnchor): Point {
  return shifted(bed, anchor === "corner" ? 1 : 0);
}

/** Where the anchor of a bed lies whose x and y are those of its middle, metres. */
export function anchorOf(bed: AnchoredBed, anchor: BedAnchor): Point {
  return shifted(bed, anchor === "corner" ? -1 : 0);
}

function shifted({ x, y, widthM, lengthM, turnDeg }: AnchoredBed, halves: number): Point {
  const shift = shiftOnSheet((halves * widthM) / 2, (halves * lengthM) / 2, turnDeg);
  const micrometres = (metres: number) => Math.round(metres * 1e6) / 1e6;
  return { x: micrometres(x + shift.x), y: micrometres(y + shift.y) };
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
