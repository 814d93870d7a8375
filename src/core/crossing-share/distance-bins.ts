/**
 * Shares of crossed seed of oilseed rape by distance, from a meta-analysis of trials: Huesken and
 * Dietz-Pfeilstetter 2007, table 3.8 in OECD, Safety Assessment of Transgenic Organisms, volume 5,
 * 2016 (read there). And the older trial of the self-incompatible turnip rape.
 */

/** [metres up to, mean share, mean + 2 standard deviations over trials]. */
type Bin = readonly [number, number, number];

const PERCENT = 0.01;

/** Plots with other ground between them; the last bin was measured beyond 200 m. */
const SEPARATE: readonly Bin[] = [
  [10, 0.94, 1.96],
  [20, 0.4, 1.34],
  [50, 0.14, 0.36],
  [100, 0.11, 0.33],
  // Nothing was measured between 100 and 200 m: the mean of beyond, the upper end of before.
  [200, 0.05, 0.33],
  [Infinity, 0.05, 0.15],
];

/** Within one field, metres from the source's edge. */
const ADJOINING: readonly Bin[] = [
  [10, 1.78, 6.74],
  [20, 0.33, 1.23],
  [50, 0.05, 0.15],
  [Infinity, 0.04, 0.12],
];

/** A lower and an upper share, 0 to 1. */
export type Shares = readonly [number, number];

function binned(bins: readonly Bin[], distanceM: number): Shares {
  const [, mean, upper] = bins.find(([upTo]) => distanceM <= upTo) ?? [0, 0, 0];
  return [mean * PERCENT, upper * PERCENT];
}

/** Nearer than this two plots adjoin: bare ground of 3 to 4 m works like 1 m of crop (Reboud 2003). */
export const ADJOINING_M = 1;

/** Average share of the trials and their upper end between plots this far apart. */
export function separateShares(distanceM: number): Shares {
  return binned(SEPARATE, distanceM);
}

/** The same for plants this far from the edge of a source that adjoins. */
export function adjoiningShares(distanceM: number): Shares {
  return binned(ADJOINING, distanceM);
}

/** The distances turnip rape was tried at: 46 to 366 m. */
export const TURNIP_RAPE_M: Shares = [46, 366];

/**
 * Upper share for self-incompatible kin: our log-log line through the 8.5, 5.8 and 3.7 percent of
 * isolated blocks of turnip rape at 46, 137 and 366 m (Canada). Nearer and farther than tried it
 * stays at the end value: at 46 m it is then no upper limit.
 */
export function turnipRapeShare(distanceM: number): number {
  const [near, far] = TURNIP_RAPE_M;
  return 40 * Math.min(far, Math.max(near, distanceM)) ** -0.4 * PERCENT;
}
