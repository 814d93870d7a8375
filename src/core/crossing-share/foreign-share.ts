/** Fields of pollen added up, and the share of seed that foreign pollen made of them. */
/** Pollen at each of some places, and what it counts. */
export interface WeighedField {
  readonly field: Float64Array;
  readonly strength: number;
}

/** The fields added up place by place, each as much as it counts. */
export function addedFields(places: number, fields: readonly WeighedField[]): Float64Array {
  const sums = new Float64Array(places);
  for (const { field, strength } of fields) {
    if (strength <= 0) continue;
    for (let place = 0; place < places; place++) {
      sums[place] = (sums[place] as number) + strength * (field[place] as number);
    }
  }
  return sums;
}

/**
 * Mean of foreign / (own + foreign) over places; 0 where there is no place.
 * @param strength what the foreign pollen counts
 */
export function meanShare(own: Float64Array, foreign: Float64Array, strength = 1): number {
  let sum = 0;
  for (let place = 0; place < own.length; place++) {
    const theirs = strength * (foreign[place] as number);
    if (theirs > 0) sum += theirs / (theirs + (own[place] as number));
  }
  return own.length === 0 ? 0 : sum / own.length;
}
