/**
 * Marking out without instruments: two stakes in front of the beds, and for every corner its
 * coordinates from the first stake and a tape length from each. Two circles round the stakes meet
 * in the corner. The stakes stand back from the beds and far enough apart that the tapes never
 * cross at so flat an angle that a millimetre of tape is a centimetre of ground.
 */
import { type Bounds, joinBounds } from "../geometry/bounds.ts";
import { outlineOf, shapeCorners } from "../geometry/outline.ts";
import { type Point, pointDistance } from "../geometry/point.ts";
import type { LengthUnit } from "../model/length.ts";
import type { Layout } from "../model/plan.ts";

export interface SetOutCorner {
  /** Bed or planting the corner is of. */
  readonly code: string;
  /** Counted from 1, in the order of the outline. */
  readonly number: number;
  /** Metres from stake P: along the line to Q, and square to it. */
  readonly x: number;
  readonly y: number;
  /** Tape from P and from Q, metres, to the millimetre or to a sixteenth of an inch. */
  readonly fromP: number;
  readonly fromQ: number;
  /** To the next corner, and of four corners to the one across for the first two; metres, as taped. */
  readonly toNext: number;
  readonly across: number | null;
}

export interface SetOut {
  /** Stakes in sheet metres; P is the origin, Q lies to the right of it. */
  readonly p: Point;
  readonly q: Point;
  readonly baselineM: number;
  readonly corners: readonly SetOutCorner[];
  /** Farthest that the point where two tapes as printed meet lies from its corner, metres. */
  readonly worstM: number;
}

/** The stakes stand back by this share of the baseline, and at least by half a metre. */
const SET_BACK = 0.05;
const LEAST_SET_BACK_M = 0.5;
const LEAST_BASELINE_M = 2;
/** The baseline is at least this share of how deep the beds reach. */
const DEPTH_SHARE = 0.5;

/** What a tape shows: millimetres, or sixteenths of an inch; and the steps of the baseline, metres. */
const TAPE_STEP_M: Readonly<Record<LengthUnit, number>> = { m: 0.001, ft: 0.0254 / 16 };
const BASELINE_STEP_M: Readonly<Record<LengthUnit, number>> = { m: 0.1, ft: 0.1524 };

/** Tapes and baseline as they can be read in a unit. Null when there is nothing to mark out. */
export function setOut(layout: Layout, unit: LengthUnit): SetOut | null {
  const beds = new Set(layout.beds.map(({ id }) => id));
  const items = [
    ...layout.beds,
    ...layout.plantings.filter(({ bed }) => bed === undefined || !beds.has(bed)),
  ];
  const bounds = joinBounds(items.map((item) => outlineOf(item.outline).bounds));
  if (!bounds) return null;
  const { p, q } = stakes(bounds, BASELINE_STEP_M[unit]);
  const baselineM = q.x - p.x;
  const corners = items.flatMap(({ code, outline }) => {
    const all = shapeCorners(outline);
    return all.map((corner, index): SetOutCorner => ({
      code,
      number: index + 1,
      x: corner.x - p.x,
      y: corner.y - p.y,
      fromP: toTape(pointDistance(p, corner), unit),
      fromQ: toTape(pointDistance(q, corner), unit),
      toNext: toTape(pointDistance(corner, all[(index + 1) % all.length] as Point), unit),
      across:
        all.length === 4 && index < 2
          ? toTape(pointDistance(corner, all[index + 2] as Point), unit)
          : null,
    }));
  });
  const errors = corners.map((corner) => {
    const met = whereTapesMeet(corner.fromP, corner.fromQ, baselineM);
    return Math.hypot(met.x - corner.x, met.y - corner.y);
  });
  return { p, q, baselineM, corners, worstM: Math.max(...errors) };
}

function stakes(
  { minX, maxX, minY, maxY }: Bounds,
  stepM: number,
): { readonly p: Point; readonly q: Point } {
  const wanted = Math.max(maxX - minX, (maxY - minY) * DEPTH_SHARE, LEAST_BASELINE_M);
  // A whole number of decimetres or half feet is easy to tape, and loses nothing.
  const baseline = Math.ceil(wanted / stepM - 1e-9) * stepM;
  const y = minY - Math.max(LEAST_SET_BACK_M, baseline * SET_BACK);
  const x = (minX + maxX - baseline) / 2;
  return { p: { x, y }, q: { x: x + baseline, y } };
}

/** Where two tapes meet in front of the baseline: P at 0, 0 and Q at baseline, 0; metres. */
export function whereTapesMeet(fromP: number, fromQ: number, baselineM: number): Point {
  const x = (fromP * fromP - fromQ * fromQ + baselineM * baselineM) / (2 * baselineM);
  return { x, y: Math.sqrt(Math.max(0, fromP * fromP - x * x)) };
}

/** To what a tape shows. */
export function toTape(metres: number, unit: LengthUnit): number {
  const stepM = TAPE_STEP_M[unit];
  return Math.round(metres / stepM) * stepM;
}

/** A length as it is read off a tape: `12.345 m`, or `12' 6 5/16"`. */
export function tapeText(metres: number, unit: LengthUnit): string {
  if (unit === "m") return `${metres.toFixed(3)} m`;
  const steps = Math.round(Math.abs(metres) / TAPE_STEP_M.ft);
  const feet = Math.floor(steps / 192);
  const inches = Math.floor((steps % 192) / 16);
  const [upper, lower] = lowestTerms(steps % 16, 16);
  const fraction = upper === 0 ? "" : ` ${upper}/${lower}`;
  return `${metres < 0 && steps > 0 ? "-" : ""}${feet}' ${inches}${fraction}"`;
}

/** The least length a tape can tell that is no less than an error: `3 mm`, or `1/8"`. */
export function errorText(metres: number, unit: LengthUnit): string {
  if (unit === "m") return `${Math.max(1, Math.ceil(metres * 1000 - 1e-9))} mm`;
  const steps = Math.max(1, Math.ceil(metres / TAPE_STEP_M.ft - 1e-9));
  const [upper, lower] = lowestTerms(steps % 16, 16);
  const whole = Math.floor(steps / 16);
  return [whole === 0 ? "" : String(whole), upper === 0 ? "" : `${upper}/${lower}`]
    .filter((part) => part !== "")
    .join(" ")
    .concat('"');
}

function lowestTerms(upper: number, lower: number): readonly [number, number] {
  return upper > 0 && upper % 2 === 0 ? lowestTerms(upper / 2, lower / 2) : [upper, lower];
}
