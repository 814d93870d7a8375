/** What a share of crossed seed means: plants to rogue, plants to grow, what is left in the line. */

/** Binomial counts within which 95 in 100 seasons lie, from a low and a high share. */
export interface OffTypes {
  /** Mean counts at the low and at the high share. */
  readonly expected: readonly [number, number];
  /** The 2.5 % count at the low share and the 97.5 % count at the high one. */
  readonly within: readonly [number, number];
}

/**
 * Crossed plants among those grown next year.
 * @param plants a whole number, 0 or more
 * @param shares lowest and highest share of crossed seed, 0 to 1
 */
export function offTypesAmong(plants: number, shares: readonly [number, number]): OffTypes {
  const [low, high] = shares;
  return {
    expected: [plants * low, plants * high],
    within: [binomialQuantile(plants, low, 0.025), binomialQuantile(plants, high, 0.975)],
  };
}

/** Least count k with P(at most k of n) at or above `level`, each of n with chance `share`. */
export function binomialQuantile(n: number, share: number, level: number): number {
  if (share <= 0 || n === 0) return 0;
  if (share >= 1) return n;
  // In logarithms, for (1 - share)^n of many plants falls below the smallest number there is.
  let logTerm = n * Math.log1p(-share);
  let sum = Math.exp(logTerm);
  const logOdds = Math.log(share) - Math.log1p(-share);
  let count = 0;
  while (sum < level && count < n) {
    logTerm += logOdds + Math.log((n - count) / (count + 1));
    count += 1;
    sum += Math.exp(logTerm);
  }
  return count;
}

/**
 * Plants to grow to see at least one crossed plant with the given certainty; null when none is
 * ever to be seen (share 0).
 */
export function plantsToSeeOne(share: number, certainty = 0.95): number | null {
  if (share <= 0) return null;
  if (share >= 1) return 1;
  return Math.ceil(Math.log(1 - certainty) / Math.log1p(-share));
}

/**
 * Share of foreign blood in the line after some seasons at one share of crossed seed a season:
 * 1 - (1 - c/2)^t, a cross bringing half of its genes (standard algebra of migration).
 * @param rogued share of crossed plants that are seen and taken out before they flower, 0 to 1
 */
export function foreignInLine(share: number, seasons: number, rogued = 0): number {
  const left = (share * (1 - rogued)) / (1 - share * rogued);
  return 1 - (1 - (Number.isFinite(left) ? left : 0) / 2) ** seasons;
}
