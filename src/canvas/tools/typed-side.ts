/** A side of an outline given by its length, and by its direction where that is typed too. */
import { type Point, directionDeg, turnPoint } from "../../core/geometry/point.ts";

/** Pointed directions come to rest on those people mean: right angles and their halves and thirds. */
const STEP_DEG = 15;
const REACH_DEG = 4;

export interface SideStart {
  /** The corner the side begins at. */
  readonly last: Point;
  /** Direction of the side before, degrees clockwise from up. */
  readonly drawn: number;
  /** Where the pointer shows to. */
  readonly pointed: Point | null;
}

/** The end of the side. */
export function alongSide(
  { last, drawn, pointed }: SideStart,
  lengthM: number,
  degrees: number | null,
): Point {
  const turn = degrees ?? (pointed ? settled(directionDeg(last, pointed), drawn) : drawn);
  const end = turnPoint({ x: last.x, y: last.y + lengthM }, last, turn);
  return { x: rounded(end.x), y: rounded(end.y) };
}

/** Level, plumb or square to the side before, when it is nearly that. */
function settled(direction: number, drawn: number): number {
  for (const from of [drawn, 0]) {
    const near = from + Math.round((direction - from) / STEP_DEG) * STEP_DEG;
    if (Math.abs(near - direction) <= REACH_DEG) return near;
  }
  return direction;
}

/** Degrees as typed; null when nothing is, undefined when it is no number. */
export function readDegrees(text: string): number | null | undefined {
  const plain = text.trim().replace(/°$/, "").trimEnd().replace(",", ".").replace("\u2212", "-");
  if (plain === "") return null;
  return /^-?\d{1,3}(\.\d+)?$/.test(plain) ? Number(plain) : undefined;
}

/** To the micrometre: no rounding noise in the plan file. */
function rounded(metres: number): number {
  return Math.round(metres * 1e6) / 1e6;
}
