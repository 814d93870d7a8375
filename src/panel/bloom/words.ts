/** Words of bloom on the screen. */

export const start = "Start";
export const on = "On";
export const flowering = "Flowering";
export const ownBloomDates = "Own bloom dates";
export const startOf = (name: string) => `Start of ${name}`;
export const dragTitle = (name: string, startText: string) =>
  `${name}, ${startText}: drag to flower on another day`;
export const firstFlower = "First flower";
export const lastFlower = "Last flower";
export const shedsPollen = "Sheds pollen";
export const takesPollen = "Takes pollen";
export const restsOn = "Rests on";
export const flowersOnUntilFrost =
  "Flowers on until frost, cutting or the end of the season: type the variety's days of bloom if it ends sooner.";
export const spanAtMost = (from: string, to: string) => `${from} to ${to} at most`;
export const stepTitle = "Step to the next day on which something opens or ends";
export const step = "Step";
export const stopTheDays = "Stop the days";
export const playTheDays = "Play the days over the sheet";
export const stop = "Stop";
export const play = "Play";
export const clearDay = "Clear day";
export const clear = "Clear";
export const dayOnSheet = "Day shown on the sheet";
export const noDayShown = (day: string) => `no day shown; ${day}`;
export const pickDayHint = "Pick a day here: the sheet then shows what stands and flowers on it.";
export const inFlower = (day: string, open: number) => `${day} · ${open} in flower`;
export const shiftUpTo = "If bloom shifts by up to (days)";
export const pairNamed = (first: string, second: string) => `${first} and ${second}`;
export const noSlack = "no slack";
export const ofSlack = (days: string) => `${days} of slack`;
export const lastFrost = "last frost";
export const firstFrost = "first frost";
export const sownInPlace = "sown in place";
export const setOut = "set out (plants, roots, bulbs)";
export const changeStart = (code: string) => `Change start of ${code}`;
export const setStart = (code: string) => `Set start of ${code}`;
export const changeFlowering = (code: string) => `Change flowering of ${code}`;
export const setBloom = (code: string) => `Set bloom of ${code}`;
export const noBloomDates = "No bloom dates: type a start, or the bloom dates below.";
export const bloomUnknown = (why: string) => `${why} Type the bloom dates below.`;
export const atEarliest = (day: string) => `at the earliest ${day}`;
export const atLatest = (day: string) => `at the latest ${day}`;
export const ownDatesCertain = "Own dates, taken as certain.";
export const lengthRestsOn = (firstFlowerText: string, basis: string) =>
  `${firstFlowerText} How long it flowers rests on: ${basis}.`;
export const dayInFlower = (day: string, open: number) => `${day}, ${open} in flower`;
export const typeDegreeDays = "Type degree-days, for example 1200-1315";
export const degreeDaysBounds = "Type between 1 and 10000 C-days";
export const smallerFirst = "The smaller number comes first";
export const heatMethods = {
  "simple average": "simple average",
  "modified average": "modified average",
  "single triangle": "single triangle",
  "single sine": "single sine",
} as const;
export const heatWords = (heat: {
  readonly sum: string;
  readonly unit: string;
  readonly method: string;
  readonly base: string;
  readonly cap: string | null;
}) =>
  heat.cap === null
    ? `${heat.sum} ${heat.unit}-days, ${heat.method}, base ${heat.base} °${heat.unit}, no cap`
    : `${heat.sum} ${heat.unit}-days, ${heat.method}, base ${heat.base} °${heat.unit}, cap ${heat.cap} °${heat.unit}`;
