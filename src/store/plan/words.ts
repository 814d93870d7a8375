/** Words of a variety placed from the seed list. */

export const kindNotKnown = (variety: string) =>
  `The kind of ${variety} is not known: choose it first.`;
export const bedIsFull = (bed: string) => `Bed ${bed} is full.`;
export const placeInBed = (variety: string, bed: string) => `Place ${variety} in bed ${bed}`;
export const follows = (code: string, after: string, from: string) =>
  `${code} follows ${after}, from ${from}.`;
