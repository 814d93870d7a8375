/** What the shelf has to say of a sowing: fetched with what reckons it. */

export const short = (variety: string) => `Seed of ${variety} does not reach`;
export const missingSeed = (missing: number, plants: number, seeds: number) =>
  `There is none for ${missing} of ${plants} plants: about ${seeds} seeds are missing, reckoned with each lot's germination, what comes up, and the spare.`;
export const shortAdvice = "Sow fewer, name another lot, or get more seed.";
export const old = (code: string, variety: string) =>
  `Lot ${code} of ${variety} may hardly come up`;
export const underPublished = (share: string, date: string, percent: number) =>
  `By estimate ${share} of it will germinate on ${date}, under the ${percent} % of 7 CFR 201.31.`;
export const underHalf = (share: string, date: string, percent: number) =>
  `By estimate ${share} of it will germinate on ${date}, under the ${percent} % that is half of it.`;
export const oldAdvice = "Test it, sow more of it, or sow another lot.";
export const other = (name: string, variety: string) => `${name} is sown from a lot of ${variety}`;
export const otherAdvice = (code: string, lotVariety: string, variety: string) =>
  `Lot ${code} is of ${lotVariety}, the planting is ${variety}. Name another lot, or change the planting's variety.`;
export const mother = (name: string, cycles: number, code: string) =>
  `${name} would be ${cycles} growings-out from lot ${code}`;
export const motherOf = (code: string, most: number) =>
  `It is sown from ${code}. Gene banks grow seed of seed at most ${most} times and then go back to the first lot (Rao 2006).`;
export const motherAdvice = (code: string) =>
  `${code} still has seed: sow that, if it germinates, and keep some of it back.`;
