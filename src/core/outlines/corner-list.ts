/**
 * Corners of an outline as people type or paste them, one to a line:
 *
 * - `12.5, 3`: right and up from the sheet's origin, in any unit;
 * - `12 m at 90`: a side from the corner before by its length and its direction, degrees clockwise;
 * - `6, 0 through 3, 2`: a curve from the corner before to the first place, by way of the second.
 *
 * A heading without a number, empty lines and what stands behind `#` are passed over; a last corner
 * that is the first again closes the outline and is left out.
 */
import { arcThrough } from "../geometry/arc.ts";
import { type Point, pointDistance, turnPoint } from "../geometry/point.ts";
import type { DecimalMark } from "../model/decimal-marks.ts";
import { type LengthUnit, parseLength } from "../model/length.ts";
import { LIMITS } from "../model/limits.ts";
import { cornerListWords as words } from "./corner-list-words.ts";

/** Corners nearer than this are one, metres. */
const SAME_M = 0.001;

export interface CornerReading {
  /** Of bare numbers. */
  readonly unit: LengthUnit;
  readonly decimalMark?: DecimalMark | undefined;
  /** Where direction 0 points, degrees clockwise from the sheet's top: 0, or the way to north. */
  readonly zeroDeg: number;
}

export interface CornerList {
  readonly corners: readonly Point[];
  /** Curves among the edges, and how far their edges lie inside the arcs at most, metres. */
  readonly curves: number;
  readonly curveErrorM: number;
  /** From the last corner to the first, metres: the side that closes the outline. */
  readonly closingM: number;
}

export type CornersRead =
  | { readonly ok: true; readonly list: CornerList }
  | { readonly ok: false; readonly reason: string };

/** The corners, or the first line that cannot be read. */
export function readCornerList(text: string, reading: CornerReading): CornersRead {
  const corners: Point[] = [];
  let curves = 0;
  let curveErrorM = 0;
  for (const [index, raw] of text.split(/\r\n|[\r\n]/).entries()) {
    const line = plainLine(raw);
    if (line === "" || (corners.length === 0 && !/\d/.test(line))) continue;
    const read = readLine(line, corners.at(-1), reading);
    const reason = typeof read === "string" ? read : faultOf(read.corners, corners);
    if (reason !== null) return { ok: false, reason: words.line(index + 1, line, reason) };
    if (typeof read === "string") continue;
    corners.push(...read.corners);
    if (read.errorM === undefined) continue;
    curves += 1;
    curveErrorM = Math.max(curveErrorM, read.errorM);
  }
  const [first, last] = [corners[0], corners.at(-1)];
  const isClosed = corners.length > 3 && first && last && pointDistance(first, last) < SAME_M;
  if (isClosed) corners.pop();
  const end = corners.at(-1);
  const closingM = first && end ? pointDistance(end, first) : 0;
  return { ok: true, list: { corners, curves, curveErrorM, closingM } };
}

function plainLine(raw: string): string {
  const hash = raw.indexOf("#");
  return (hash < 0 ? raw : raw.slice(0, hash)).replace(/[()[\]]/g, " ").trim();
}

function faultOf(added: readonly Point[], before: readonly Point[]): string | null {
  const [last, first] = [before.at(-1), added[0]];
  if (last && first && pointDistance(last, first) < SAME_M) return words.twice;
  if (before.length + added.length > LIMITS.corners) return words.tooMany(LIMITS.corners);
  return null;
}

interface ReadLine {
  readonly corners: readonly Point[];
  /** Of a curve. */
  readonly errorM?: number;
}

/** What a line adds, or why it cannot be read. */
function readLine(
  line: string,
  last: Point | undefined,
  reading: CornerReading,
): ReadLine | string {
  const [end = "", via, ...more] = line.split(/\bthrough\b/i);
  if (more.length > 0) return words.expected;
  if (via !== undefined) {
    const [to, by] = [readPair(end, reading), readPair(via, reading)];
    if (typeof to === "string") return to;
    if (typeof by === "string") return by;
    if (!last) return words.curveFirst;
    const { corners, errorM } = arcThrough(last, by, to);
    return { corners, errorM };
  }
  const [length = "", direction, ...others] = line.split(/\bat\b|@/i);
  if (others.length > 0) return words.expected;
  if (direction !== undefined) return readSide(length, direction, last, reading);
  const corner = readPair(line, reading);
  return typeof corner === "string" ? corner : { corners: [corner] };
}

/** Without a corner before it a side begins at the sheet's origin, which is then the first corner. */
function readSide(
  length: string,
  direction: string,
  last: Point | undefined,
  { unit, decimalMark, zeroDeg }: CornerReading,
): ReadLine | string {
  const side = parseLength(length, unit, false, decimalMark);
  if (!side.ok) return lower(side.reason);
  if (side.metres < SAME_M) return words.noLength;
  const degrees = degreesOf(direction);
  if (degrees === null) return words.direction;
  const from = last ?? { x: 0, y: 0 };
  const end = turnPoint({ x: from.x, y: from.y + side.metres }, from, degrees + zeroDeg);
  const to = { x: micrometres(end.x), y: micrometres(end.y) };
  return { corners: last ? [to] : [from, to] };
}

function degreesOf(text: string): number | null {
  const plain = text
    .trim()
    .replace(/(?:°|deg|degrees)$/i, "")
    .trimEnd()
    .replace(",", ".");
  return /^-?\d{1,3}(?:\.\d{1,9})?$/.test(plain) ? Number(plain) : null;
}

/** Two lengths from one text, whatever stands between them. */
function readPair(text: string, reading: CornerReading): Point | string {
  const plain = text.trim().replace(/ ,/g, ", ");
  for (const mark of [";", "\t"]) {
    if (plain.includes(mark)) return pairOf(plain.split(mark), reading);
  }
  const byComma = plain.split(/,\s+/);
  if (byComma.length === 2) return pairOf(byComma, reading);
  const commas = plain.split(",");
  const hasSpace = /\s/.test(plain);
  if (commas.length === 2 && !hasSpace) return pairOf(commas, reading);
  return bySpaces(plain, reading);
}

/** The one space at which both halves are lengths: `3.2 m 4 m`, `3,2 4,1`, `12' 6" 3'`. */
function bySpaces(plain: string, reading: CornerReading): Point | string {
  const parts = plain.split(/\s+/);
  if (parts.length > 12) return words.expected;
  const found = parts.slice(1).flatMap((_, index) => {
    const pair = pairOf(
      [parts.slice(0, index + 1).join(" "), parts.slice(index + 1).join(" ")],
      reading,
    );
    return typeof pair === "string" ? [] : [pair];
  });
  const [only, other] = found;
  if (!only) return words.expected;
  return other ? words.twoWays : only;
}

function pairOf(texts: readonly string[], { unit, decimalMark }: CornerReading): Point | string {
  const [right, up] = texts;
  if (right === undefined || up === undefined || texts.length !== 2) return words.expected;
  const x = parseLength(right, unit, true, decimalMark);
  const y = parseLength(up, unit, true, decimalMark);
  if (!x.ok) return lower(x.reason);
  return y.ok ? { x: x.metres, y: y.metres } : lower(y.reason);
}

function lower(reason: string): string {
  return reason.charAt(0).toLowerCase() + reason.slice(1);
}

function micrometres(metres: number): number {
  return Math.round(metres * 1e6) / 1e6;
}
