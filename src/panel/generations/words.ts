/** Words of generations on the screen. */

export const lineOf = (value: string | number) => `Line of ${value}`;
export const ownForebear = (codes: readonly string[]) =>
  `${codes.join(" comes from ")}: a lot cannot be its own forebear, so none of them, nor what is grown from them, has a line. Mend what they were grown from.`;
export const noLotShelfNo =
  "No lot of it is on the shelf, and no plot for seed is planned. Add its lot to the shelf, or place it for seed.";
export const thisSeason = "This season";
export const whatHasBehindIt = (code: string | number) => `What ${code} has behind it`;
export const what = "What ";
export const hasBehindIt = " has behind it";
export const openLot = (code: string | number) => `Open lot ${code}`;
export const stepStepCounted = "Step by step, with what was counted";
export const yearColumn = "Year";
export const lot = "Lot";
export const grownFrom = "Grown from";
export const plot = "Plot";
export const seedPlants = "Seed plants";
export const pollenPlants = "Pollen plants";
export const effective = "Effective";
export const lostSoFar = "Lost so far";
export const isolation = "Isolation";
export const thisSeason2 = "this season";
export const planned = "planned";
export const noLotNamed = "no lot named";
export const notCounted = "not counted";
export const notKnown = "not known";
export const toCome = "to come";
export const byThisPlansPlot = " (by this plan's plot)";
export const equalSeed = ", equal seed";
export const andMore = " and more";
export const afterACrossing = " ✕ after a crossing";
export const yearNotKnown = "year not known";
export const plannedFor = (year: number) => `${year}, planned`;
