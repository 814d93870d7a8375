/**
 * Whether a rare allele is still there after some generations: the chain of random samples of 2 Ne
 * gene copies each (Wright 1931, Fisher 1930), reckoned through and not drawn by lot. Over one
 * generation it is 1 - (1 - p)^(2 Ne).
 */

/** More plants than this keep a little more than is said. */
export const MOST_RECKONED = 600;
/** Outcomes rarer than this are left out. */
const NEGLIGIBLE = 1e-13;

/**
 * Chance that an allele is still there, 0 to 1.
 * @param share its share in the seed the line began with
 * @param sizes effective population of each generation; part plants are rounded down
 */
export function alleleKept(share: number, sizes: readonly number[]): number {
  let chances: readonly number[] = [1];
  let copies = 0;
  sizes.forEach((size, generation) => {
    const next = Math.max(1, Math.floor(2 * Math.min(size, MOST_RECKONED) + 1e-9));
    const after = Array<number>(next + 1).fill(0);
    chances.forEach((chance, count) => {
      if (chance < NEGLIGIBLE) return;
      addBinomial(after, generation === 0 ? share : count / copies, chance);
    });
    chances = after;
    copies = next;
  });
  return sizes.length === 0 ? 1 : 1 - (chances[0] ?? 0);
}

/** Adds the chances of 0 to n copies, n being one less than there are places, weighted. */
function addBinomial(into: number[], share: number, weight: number): void {
  const copies = into.length - 1;
  if (share <= 0 || share >= 1) {
    const at = share <= 0 ? 0 : copies;
    into[at] = (into[at] ?? 0) + weight;
    return;
  }
  const odds = Math.log(share) - Math.log1p(-share);
  let log = copies * Math.log1p(-share);
  for (let count = 0; count <= copies; count += 1) {
    into[count] = (into[count] ?? 0) + weight * Math.exp(log);
    log += Math.log((copies - count) / (count + 1)) + odds;
  }
}
