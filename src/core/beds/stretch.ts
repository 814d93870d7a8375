/** Stretches of a bed, and the spacing that is assumed where a kind names none. */

/** Spacing assumed where a kind names none, metres. No source; our choice, easily changed by resizing. */
export const FALLBACK_SPACING_M = { inRow: 0.3, betweenRows: 0.4 };
/** A stretch shorter than this is not offered as free, metres. */
export const LEAST_STRETCH_M = 0.2;

/** A stretch along a bed's length, metres from its near end. */
export interface Stretch {
  readonly fromM: number;
  readonly toM: number;
}
