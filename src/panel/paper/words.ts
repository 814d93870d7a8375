/** Words of paper on the screen. */

export const filesForOthersOf = (name: string | number) => `Files for others, of ${name}`;
export const file = "File";
export const resolutionDotsPerInch = "Resolution, dots per inch";
export const saveTheFile = "Save the file";
export const notOfThisPlan = (hindrance: string | number) => `Not of this plan: ${hindrance}.`;
export const givePlanSettings = " Give it in the plan settings.";
export const makingTheFile = "Making the file ...";
export const made = (name: string | number) => `Made ${name}.`;
export const fileNotMade = (reason: string | number) => `The file was not made: ${reason}`;
