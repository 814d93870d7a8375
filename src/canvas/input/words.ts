/** What keys and drops on the sheet say. */

export const move = (names: string) => `Move ${names}`;
export const partNotLoaded = "This part could not be loaded. Is the network there?";
export const dropOnBed = "Drop it on a bed.";
