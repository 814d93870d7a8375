/**
 * Effective population: how many plants of an ideal population would lose as much of a variety's
 * diversity in one generation as these do. Standard formulas; where each is from stands with it.
 */

/** Plants whose seed is kept and plants that gave pollen, of one growing-out. */
export interface ParentNumbers {
  readonly seedPlants: number;
  /** With those of the seed plants that shed pollen as well. */
  readonly pollenPlants: number;
  /** The same amount of seed was taken from every seed plant. */
  readonly isEqualSeed: boolean;
}

/** Effective population of separate sexes, or of unequal pollen and seed parents (Wright 1931). */
export function unequalParents(pollenParents: number, seedParents: number): number {
  return (4 * pollenParents * seedParents) / (pollenParents + seedParents);
}

/**
 * Plants that are seed and pollen parents at once, seed taken from some or all of them, or pollen
 * used of some. Two genes of the next generation come from one plant with chance 1/Ne: both
 * through seed plants (a quarter), both through pollen plants (a quarter), or through one as the
 * seed plant and the other as the pollen plant (a half). With equal seed two offspring share their
 * seed plant only as far as each gives several, where as many plants are grown next as stood.
 *
 * The sum is ours. Its ends are published: N plants that are all both give N; equal seed of all,
 * pollen at random, 4N/3. It is never above the figure of separate parents (`unequalParents`).
 */
export function plantsOfBothSexes({
  seedPlants,
  pollenPlants,
  isEqualSeed,
}: ParentNumbers): number {
  const all = Math.max(seedPlants, pollenPlants);
  const throughSeed = sharedSeedPlant(seedPlants, all, isEqualSeed);
  return 1 / (throughSeed / 4 + 1 / (4 * pollenPlants) + 1 / (2 * all));
}

/** Females and males on plants of their own. */
export function plantsOfOneSex({ seedPlants, pollenPlants, isEqualSeed }: ParentNumbers): number {
  const throughSeed = sharedSeedPlant(seedPlants, seedPlants + pollenPlants, isEqualSeed);
  return 1 / (throughSeed / 4 + 1 / (4 * pollenPlants));
}

/** Chance that two offspring of `grown` plants have one seed plant. */
function sharedSeedPlant(seedPlants: number, grown: number, isEqualSeed: boolean): number {
  if (!isEqualSeed || grown <= 1) return 1 / seedPlants;
  return (grown / seedPlants - 1) / (grown - 1);
}

/** Partial selfing, `share` of the seed (Vencovsky & Crossa 1999, Crop Sci. 39:1282). */
export function partlySelfed(plants: number, share: number): number {
  return plants * (1 - 0.5 * share);
}

/** Inbreeding gained over generations of such sizes, F: the part of the diversity that is lost. */
export function inbreedingOver(sizes: readonly number[]): number {
  return 1 - sizes.reduce((kept, size) => kept * (1 - 1 / (2 * size)), 1);
}

/** The size that, kept up, would lose as much: the few of one year weigh most. */
export function harmonicMean(sizes: readonly number[]): number {
  return sizes.length / sizes.reduce((sum, size) => sum + 1 / size, 0);
}

/** Part of the heritage that is foreign after generations with so much foreign seed in each. */
export function foreignAfter(share: number, generations: number): number {
  return 1 - (1 - share / 2) ** generations;
}
