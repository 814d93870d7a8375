/** Words of the parts of findings that are fetched when they are opened. */

export const acceptedBeforeBecomeWorse =
  "Accepted before. It has become worse since, or an older file did not keep how near it was.";
export const cancel = "Cancel";
export const typeReasonNextYear = "Type a reason: next year nobody remembers it";
export const accepted = (count: string | number) => `${count} accepted`;
export const acceptedBecause = (reason: string | number) => `Accepted because: ${reason}`;
export const reset = (title: string | number) => `Reset: ${title}`;
export const reset2 = "Reset";
export const mayCross = "What may cross with it";
export const nothingNearerThanDistance = "Nothing nearer than its distance.";
export const pollenOf = "Pollen of ";
export const itsPollenOn = "Its pollen on ";
export const nothingPlanCouldCross = "Nothing in this plan that could cross with it sheds pollen.";
export const sourceBySource = "Source by source";
export const andThatSendLess = (value: string | number) => `And ${value} that send less.`;
export const shadeTheSheet = "Shade the sheet";
export const whatItMeans = "What it means";
export const plantsGrownNextYear = "Plants grown next year";
export const seasonsAtThisShare = "Seasons at this share";
export const crossedPlantsRoguedOf = "Crossed plants rogued, of 100";
export const howMuchWouldCross = "How much would cross";
export const estimating = "Estimating ...";
export const ofAllSeeds = (rarityRange: string | number) => `Of all seeds, ${rarityRange}`;
export const show = "Show";
export const sowingDates = "Sowing dates";
export const accept = "Accept";
export const lookingForDates = "Looking for dates ...";
export const whyThisIsAcceptable = "Why this is acceptable";
export const figures = "Figures";
export const yearsRecordTellNothing =
  "The years of the record tell nothing more: the two are open together for too long, or fewer than two years are whole.";
export const apply = (title: string | number) => `Apply: ${title}`;
export const apply2 = "Apply";
export const yearsTried = (about: string | number) => `Years tried: ${about}`;
export const yearsTried2 = "Years tried";
export const tryingTheYears = "Trying the years ...";
export const theTwo = (seasons: string) => `The two ${seasons}.`;
export const seedOf = (parent: string, seasons: string) => `Seed of ${parent}: ${seasons}.`;
