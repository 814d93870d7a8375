/** Words of a variety placed from the seed list. */

export const kindNotKnown = (variety: string) =>
  `The kind of ${variety} is not known: choose it first.`;
export const bedIsFull = (bed: string) => `Bed ${bed} is full.`;
export const placeInBed = (variety: string, bed: string) => `Place ${variety} in bed ${bed}`;
const methods = { sown: "sown", transplanted: "set out" } as const;
/** The step with the day taken for it: `Place Old Ferry in bed B02, set out 17 May`. */
export const startingOn = (title: string, method: keyof typeof methods, day: string) =>
  `${title}, ${methods[method]} ${day}`;
export const follows = (code: string, after: string, from: string) =>
  `${code} follows ${after}, from ${from}.`;
