/** Commands of site: their names, further words they are found by, and why they cannot be used. */

export const plotFacts = "Your plot: size, place, frosts ...";
export const plotFactsAlso = "site outline edge position latitude longitude frost first steps";
export const planSettings = "Plan settings";
export const planSettingsAlso = "units season level frost";
