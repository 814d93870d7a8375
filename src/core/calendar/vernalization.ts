/**
 * How much cold has been felt, for the two kinds a published function exists for. Other biennials
 * get plain words instead of a number.
 */

/**
 * Effective cold of one day for carrot, C: nothing below -1, rising to 7.5 at 6.5, falling to
 * nothing at 16 (Atherton, Craigon & Basher 1990, J. Hort. Sci. 65:423-429, cultivar Chantenay;
 * counted only from 8 to 12 leaves on).
 */
export function carrotColdOfDay(meanC: number): number {
  if (meanC <= -1 || meanC >= 16) return 0;
  return meanC <= 6.5 ? meanC + 1 : (7.5 * (16 - meanC)) / 9.5;
}

/** C-days of cold after which the first carrot plants can flower, and after which 90 % do. Source as above. */
export const CARROT_COLD = { first: 126, most: 336 } as const;

/**
 * Share of full vernalization of onion bulbs after a number of fully effective cold days: half at
 * 30 (Streck 2003, A vernalization model in onion, Rev. Bras. Agrociencia).
 */
export function onionVernalized(effectiveDays: number): number {
  const power = Math.max(0, effectiveDays) ** 5;
  return power / (30 ** 5 + power);
}

/**
 * Effectiveness of one day for onion, 0 to 1, with cardinal temperatures 0, 10 and 16 C (Streck
 * 2003). The shape between them is the beta function of Wang & Engel 1998; its algebra is given
 * from memory.
 */
export function onionColdOfDay(meanC: number): number {
  const [least, best, most] = [0, 10, 16];
  if (meanC <= least || meanC >= most) return 0;
  const alpha = Math.LN2 / Math.log((most - least) / (best - least));
  const u = (meanC - least) ** alpha;
  const v = (best - least) ** alpha;
  return (2 * u * v - u * u) / (v * v);
}
