/** Ratios of a drawing: millimetres on the ground for one on paper. */
import { METRES_PER_FOOT, type LengthUnit } from "../model/length.ts";

/** With those of the usual three-edged scale ruler. */
const METRIC = [20, 25, 50, 75, 100, 125, 200, 250, 500, 1000, 2000, 2500, 5000, 10_000];
/** Feet on the ground for an inch on paper. */
const FEET_PER_INCH = [2, 4, 5, 8, 10, 16, 20, 40, 50, 100, 200, 400, 800];

/** Ratios offered first, finest first: round ones of the unit. */
export function standardRatios(unit: LengthUnit): readonly number[] {
  return unit === "m" ? METRIC : FEET_PER_INCH.map((feet) => feet * 12);
}

/** `1:100`, or `1 in = 8 ft (1:96)` for a round ratio of a plan in feet. */
export function ratioText(ratio: number, unit: LengthUnit): string {
  const plain = `1:${Number(ratio.toFixed(2))}`;
  return unit === "ft" && ratio % 12 === 0 ? `1 in = ${ratio / 12} ft (${plain})` : plain;
}

/** Metres on the ground that a length on paper stands for. */
export function groundMetres(onPaperMm: number, ratio: number): number {
  return (onPaperMm * ratio) / 1000;
}

/** Millimetres on paper that a length on the ground takes. */
export function paperMm(groundM: number, ratio: number): number {
  return (groundM * 1000) / ratio;
}

/** A length on the ground in round units, for scale bars and grids. */
export interface RoundLength {
  readonly metres: number;
  /** In the unit: 5, 10, 20 ... */
  readonly count: number;
}

/** The longest length of 1, 2 or 5 times a power of ten units that takes at most so much paper. */
export function longestRound(maxPaperMm: number, ratio: number, unit: LengthUnit): RoundLength {
  const unitMetres = unit === "m" ? 1 : METRES_PER_FOOT;
  const most = groundMetres(maxPaperMm, ratio) / unitMetres;
  const power = 10 ** Math.floor(Math.log10(most) + 1e-9);
  const factor = [5, 2, 1].find((each) => each * power <= most * (1 + 1e-9)) ?? 1;
  const count = Number((factor * power).toPrecision(3));
  return { count, metres: count * unitMetres };
}
