/** Words of shelf on the screen. */
import { type Noun, counted, formOf } from "../../core/words/plurals.ts";

const lotNoun: Noun = { one: "lot", other: "lots" };
const plantNoun: Noun = { one: "plant", other: "plants" };

export const seedLotsAsCsv = "Seed lots as CSV";
export const codeWord = "code";
export const variety = "variety";
export const lotSample = "variety, harvest year, amount, unit\nOld Ferry, 2024, 12, g";
export const headingsNeeded =
  "A heading {variety} is needed; without a heading {code} each row is a new lot, with a code by your pattern. A row whose code is on the shelf changes that lot, others are added; empty cells leave things as they are.";
export const cancel = "Cancel";
export const lotsHeading = "Lots";
export const list = "List";
export const addALot = "Add a lot";
export const fromAHarvest = "From a harvest";
export const scan = "Scan";
export const storagePlaces = "Storage places";
export const csv = "CSV";
export const mostUrgentFirstLayout =
  "Most urgent first; what the layout on screen sows is taken off. Standards are the germination standards of 7 CFR 201.31, half where there is none. An estimate is no test: test a doubtful lot before you give it up.";
export const toRenewThisSeason = "To renew this season";
export const canWaitOneTwo = "Can wait one or two seasons";
export const goodForLonger = "Good for longer";
export const noOtherVarietySeed = "No other variety has seed on the shelf.";
export const now = (codeText: string | number, bandWords: string | number) =>
  ` ${codeText} now: ${bandWords}.`;
export const seasonsSeedListPlants = (wantedPlants: string | number) =>
  `✓ In this season’s seed list: ${wantedPlants} plants`;
export const askSeedElsewhereThere = "Ask for seed elsewhere: there is none to sow.";
export const open = (codeText: string | number) => `Open ${codeText}`;
export const enterATestOf = (codeText: string | number) => `Enter a test of ${codeText}`;
export const enterATest = "Enter a test";
export const seedYouStandsHere =
  "The seed you have stands here: what lots, how old, whether they live, and how much. Add a lot, or read a list from a spreadsheet with CSV.";
export const findLotsCodeVariety = "Find lots by code, variety, kind, place, giver or note";
export const findLots = "Find lots";
export const sortBy = "Sort by";
export const show = "Show";
export const lotsAll = (all: string | number) => `${all} lots`;
export const ofLots = (found: string | number, all: string | number) => `${found} of ${all} lots`;
export const lotsOnTheShelf = "Lots on the shelf";
export const noLotLike =
  "No lot is like that. Type less of the name, or pick another sort of lots.";
export const unknown = "unknown";
export const treated = "treated";
export const mayHaveCrossed = "may have crossed";
export const placeNotKnown = "place not known";
export const needs = (seedsWords: string | number) => `needs ${seedsWords}`;
export const germinationNotKnown = "germination not known";
export const tested = "tested";
export const notTested = "not tested";
export const nothingSownLayoutYet =
  "Nothing is sown in this layout yet. Place varieties and give each its day: what to sow, and how much, is then listed here.";
export const toSow = "To sow";
export const sowingListAsPdf = "Sowing list as PDF";
export const sowingListAsCsv = "Sowing list as CSV";
export const chooseLotsFor = (codeText: string | number) => `Choose lots for ${codeText}`;
export const chooseLots = "Choose lots";
export const showOnTheSheet = (codeText: string | number) => `Show on the sheet: ${codeText}`;
export const showOnTheSheet2 = "Show on the sheet";
export const nothingRootsPlantsSecond =
  "Nothing: roots and plants of a second year are set out, not sown.";
export const howMuchIsSown = "How much is sown";
export const seedsPlantsXSpare = (
  value: string | number,
  value2: string | number,
  value3: string | number,
) =>
  `Seeds = plants x (1 + spare) / (germination x what comes up). Rules of thumb, from memory, of seed that can germinate: ${value} % comes up in a good seedbed or in trays, ${value2} % in a fair one, ${value3} % in a poor one. Your own figures are better.`;
export const comesUpOutdoors = "Comes up outdoors, %";
export const comesUpInTrays = "Comes up in trays, %";
export const sparePlants = "Spare plants, %";
export const lotsFor = (codeText: string | number) => `Lots for ${codeText}`;
export const likeliestComeUpFirst =
  ", the likeliest to come up first. Choose in the order of use; with none chosen the best is proposed.";
export const noLotOnShelf = "There is no lot of it on the shelf.";
export const sowFromThese = "Sow from these";
export const whenSown = (bandWords: string | number) => `${bandWords} when sown`;
export const ofAnotherVariety = "of another variety";
export const stateNames = {
  "in stock": "in stock",
  "used up": "used up",
  discarded: "discarded",
} as const;
export const rowForEach = (count: number) =>
  formOf(count, {
    one: "One row for the one lot, with a heading row.",
    other: `One row for each of the ${count} lots, with a heading row.`,
  });
export const lotListFile = "a list of lots as CSV";
export const codeColumn = "Code";
export const varietyColumn = "Variety";
export const amountColumn = "Amount";
export const effectColumn = "What it does";
export const effects = { new: "new", changed: "changed", same: "as it is" } as const;
export const newPlaces = (names: readonly string[]) => `New storage places: ${names.join(", ")}.`;
export const addLots = (count: number) => `Add ${counted(count, lotNoun)}`;
export const shelfPart = "Shelf";
export const renewPart = "To renew";
export const sowPart = "To sow";
export const inStock = (count: number) => `${count} in stock`;
export const inStockOf = (count: number, all: number) => `${count} in stock of ${all}`;
export const noSeedLeft = "No seed left";
export const underStandard = "Under its standard";
export const tooLittleSeed = "Too little seed";
export const lessThanReserve = "Less than kept in reserve";
export const likelyUnder = "Likely under its standard";
export const failsSoon = "Fails soon";
export const dueBy = (year: string) => `Due by ${year}`;
export const ageNotKnown = "Age not known";
export const nothingUrgent = "Of the seed on the shelf nothing has to be grown out this season.";
export const shelfNotEntered =
  "No lot of seed is entered, so what must be renewed cannot be told. Add the lots you have, each with the year it was harvested.";
export const notOnShelf = "No lot entered";
export const notOnShelfHint = "How long these can wait is not known:";
export const nothingLater = "No variety comes due in the next two seasons.";
export const growOut = (plants: number, lot: string | null) =>
  lot === null
    ? `Grow out ${counted(plants, plantNoun)}`
    : `Grow out ${counted(plants, plantNoun)} from ${lot}`;
export const isUnder = "under standard";
export const mayBeUnder = "may be under it";
export const downloadStarted = "Download started.";
export const changeSowing = "Change how much is sown";
export const typePercentage = "Type a percentage up to 100";
export const sowFrom = (code: string, lots: string) => `Sow ${code} from ${lots}`;
export const whatIsBest = "what is best";
export const sortByVariety = "Variety";
export const sortByCode = "Code";
export const oldestFirst = "Oldest first";
export const weakestFirst = "Weakest against its standard";
export const shortFirst = "Amount against need";
export const sortByPlace = "Storage place";
export const inStockOnly = "In stock";
export const goneOnly = "Used up, discarded";
export const allLots = "All lots";
