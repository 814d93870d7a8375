/**
 * Shares of crossed seed in words: two significant figures at most, a range wherever there is one,
 * and never nought.
 */
import type { Shares } from "./distance-bins.ts";

/** Stands beside every number: what the trials were, and what the rule is. */
export const CROSSING_CAUTION =
  "Small gardens were seldom measured, and bees are not plots: the truth may lie several times higher or lower. The rule's verdict stands, whatever is estimated.";

/** The same where there is little room. */
export const SHORT_CAUTION =
  "Rough: small gardens were seldom measured, and bees are not plots. The rule decides.";

/** Shares smaller than this are no longer told apart. */
export const LEAST_SHARE = 1e-6;
/** From here on a share is told out of a hundred. */
const OF_HUNDRED_FROM = 0.195;

/** `1 in 300`, `1 in 12,000`, `45 in 100`; `fewer than 1 in 1,000,000` below what is told. */
export function rarity(share: number): string {
  if (!(share >= LEAST_SHARE)) return `fewer than 1 in ${grouped(1 / LEAST_SHARE)}`;
  if (share >= OF_HUNDRED_FROM) return `${twoFigures(100 * Math.min(1, share))} in 100`;
  return `1 in ${grouped(Number((1 / share).toPrecision(2)))}`;
}

/**
 * `about 1 in 300 to 1 in 60`, `up to about 1 in 60` where the lower end is not told. Two ends that
 * read the same are said once.
 */
export function rarityRange([low, high]: Shares): string {
  const [least, most] = [rarity(low), rarity(high)];
  if (high < LEAST_SHARE) return most;
  if (low < LEAST_SHARE) return `up to about ${most}`;
  return least === most ? `about ${most}` : `about ${least} to ${most}`;
}

/** Two ends of a share in percent: `0.8 to 4 percent`, `under 0.01 percent`. */
export function percentRange([low, high]: Shares): string {
  const [least, most] = [percent(low), percent(high)];
  if (most === null) return `under ${LEAST_PERCENT} percent`;
  if (least === null) return `up to ${most} percent`;
  return least === most ? `${most} percent` : `${least} to ${most} percent`;
}

const LEAST_PERCENT = 0.01;

function percent(share: number): string | null {
  return 100 * share < LEAST_PERCENT ? null : twoFigures(100 * share);
}

/** A number of at most two significant figures: `0.6`, `12`, `1,300`. */
export function twoFigures(value: number): string {
  return grouped(Number(value.toPrecision(2)));
}

let grouping: Intl.NumberFormat | null = null;

/** Made when first asked for: a browser takes milliseconds over it, and opening a page waits for none. */
function grouped(value: number): string {
  grouping ??= new Intl.NumberFormat("en");
  return grouping.format(value);
}

/** Where a share stands on a logarithmic bar from the least that is told (0) to all seed (1). */
export function placeOnBar(share: number): number {
  const place = 1 - Math.log10(Math.max(LEAST_SHARE, share)) / Math.log10(LEAST_SHARE);
  return Math.min(1, Math.max(0, place));
}

/** Marks on that bar, each with its words. */
export function barMarks(): readonly { readonly share: number; readonly words: string }[] {
  return [1e-5, 1e-4, 1e-3, 1e-2, 1e-1].map((share) => ({ share, words: rarity(share) }));
}
