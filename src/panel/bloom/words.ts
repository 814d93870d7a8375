/** Words of bloom on the screen. */

export const nothingFlowersPlacedYet =
  "Nothing that flowers is placed yet. Place a variety, with the day it is sown or set out: its days of bloom then stand here.";
export const start = "Start";
export const on = "On";
export const flowering = "Flowering";
export const ownBloomDates = "Own bloom dates";
export const startOf = (name: string | number) => `Start of ${name}`;
export const dragFlowerAnotherDay = (name: string | number, startText: string | number) =>
  `${name}, ${startText}: drag to flower on another day`;
export const firstFlower = "First flower";
export const lastFlower = "Last flower";
export const shedsPollen = "Sheds pollen";
export const takesPollen = "Takes pollen";
export const restsOn = "Rests on";
export const flowersUntilFrostCutting =
  "Flowers on until frost, cutting or the end of the season: type the variety's days of bloom if it ends sooner.";
export const toAtMost = (shortDate: string | number, shortDate2: string | number) =>
  `${shortDate} to ${shortDate2} at most`;
export const bloom = "Bloom";
export const hatchedLikelyDashedEarliest =
  "hatched: likely; dashed: earliest to latest; striped: in conflict";
export const lateSpring = "Late spring";
export const calendar = "Calendar";
export const hide = "Hide";
export const show = "Show";
export const orderOfTheRows = "Order of the rows";
export const stepNextDaySomething = "Step to the next day on which something opens or ends";
export const step = "Step";
export const stopTheDays = "Stop the days";
export const playDaysOverSheet = "Play the days over the sheet";
export const stop = "Stop";
export const play = "Play";
export const clearDay = "Clear day";
export const clear = "Clear";
export const dayShownSheet = "Day shown on the sheet";
export const noDayShown = (words: string | number) => `no day shown; ${words}`;
export const pickDayHereSheet =
  "Pick a day here: the sheet then shows what stands and flowers on it.";
export const inFlower = (shortDate: string | number, open: string | number) =>
  `${shortDate} · ${open} in flower`;
export const ifBloomShiftsUp = "If bloom shifts by up to (days)";
export const and = (nameOf: string | number, nameOf2: string | number) =>
  `${nameOf} and ${nameOf2}`;
export const noSlack = "no slack";
export const ofSlack = (days: string | number) => `${days} of slack`;
export const lastFrost = "last frost";
export const firstFrost = "first frost";
