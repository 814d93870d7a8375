/** What the fields for a planting's place along its bed say. */
import type { Stretch } from "../../core/beds/stretch.ts";
import { type LengthUnit, formatLength } from "../../core/model/length.ts";

/** `0 to 2 m, 7 m to 10 m`: free ground of a bed; `none` when there is none. */
export function stretchesInWords(stretches: readonly Stretch[], unit: LengthUnit): string {
  if (stretches.length === 0) return "none";
  return stretches
    .map(({ fromM, toM }) =>
      toM - fromM < 0.005
        ? formatLength(fromM, unit)
        : `${formatLength(fromM, unit)} to ${formatLength(toM, unit)}`,
    )
    .join(", ");
}

/** Why a planting cannot begin there: what the bed allows, and where it would lie on free ground. */
export function startRefusal(
  bedLengthM: number,
  lengthM: number,
  freeStarts: readonly Stretch[],
  unit: LengthUnit,
): string {
  const most = Math.max(0, bedLengthM - lengthM);
  const within = stretchesInWords([{ fromM: 0, toM: most }], unit);
  const free = stretchesInWords(freeStarts, unit);
  const where =
    freeStarts.length === 0
      ? `${within}, but no free ground takes its length`
      : free === within
        ? within
        : `${within}, on free ground at ${free}`;
  return `That reaches beyond the bed, ${formatLength(bedLengthM, unit)} long: it can begin at ${where}`;
}

/** Why a planting cannot be so long: the length left from where it begins. */
export function lengthRefusal(bedLengthM: number, fromM: number, unit: LengthUnit): string {
  const left = formatLength(Math.max(0, bedLengthM - fromM), unit);
  return `That reaches beyond the bed: from ${formatLength(fromM, unit)} on, ${left} are left`;
}
