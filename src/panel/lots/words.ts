/** Words of lots on the screen. */
import { civilFromDay } from "../../core/model/day.ts";
import { type Noun, counted } from "../../core/words/plurals.ts";

export const howCodesAreMade = "How codes are made";
export const pattern = "Pattern";
export const partsBracesNamesShortened = (join: string | number) =>
  `Parts in braces: ${join}. Names are shortened to their first letters, {yy} is the year in two figures, {number} runs on.`;
export const thrownAway = (what: string | number) => `${what} thrown away`;
export const usedUp = (what: string | number) => `${what} used up`;
export const staysListThrownAway = "It stays in the list as thrown away, with why.";
export const staysListLineSeed = "It stays in the list, so that the line of seed can be followed.";
export const why = "Why";
export const deadCrossedMouldy = "dead, crossed, mouldy";
export const treatedSeedNeitherComposted =
  "! Treated seed is neither composted, fed nor poured away. Follow its label and the rules for such waste where you are.";
export const apply = "Apply";
export const codeField = "Code";
export const variety = "Variety";
export const harvestYear = "Harvest year";
export const note = "Note";
export const amountField = "Amount";
export const seedsInAGram = "Seeds in a gram";
export const kind = (value: string | number) => `${value} (kind)`;
export const notKnown = "not known";
export const kept = "Kept";
export const placeNotKnown = "place not known";
export const move = "Move";
export const before = (join: string | number) => `Before: ${join}`;
export const sealedAtMoisture = "Sealed at, % moisture";
export const notSealed = "not sealed";
export const measuredFreshWeightGoes = "Measured, of the fresh weight; goes before the place’s air";
export const grownFrom = "Grown from";
export const nothingCanSaidGermination = (name: string | number) =>
  `Nothing can be said of its germination: it has no test and no year, or nobody gives how long seed of ${name} keeps. Test it.`;
export const anotherPlaceWouldDo = "What another place would do";
export const placeField = "Place";
export const aboveItsStandardFor = "Above its standard for";
export const nowHere = "(now)";
export const anExample = "(an example)";
export const dryBeforeYouSeal = (sealedLimit: string | number) =>
  `Dry it before you seal or freeze it: at most ${sealedLimit} % moisture in a sealed pack (7 CFR 201.36c). Damp seed in a closed tin dies sooner than in a paper bag; let a cold tin warm up before you open it.`;
export const whereFrom = "Where from";
export const fromWhom = "From whom";
export const on = "On";
export const plot = "Plot";
export const season = "Season";
export const plantsSavedFrom = "Plants saved from";
export const cleanedSeedG = "Cleaned seed, g";
export const allThesePlantsGave = "All that these plants gave: your own yield";
export const particulars = "Particulars";
export const pickLotSeeChange = "Pick a lot to see and change what is known of it.";
export const lotHeading = "Lot {code}";
export const whatItIs = "What it is";
export const germinationTests = "Germination tests";
export const noneYetTestAlways = "None yet. A test always goes before an estimate.";
export const enterATest = "Enter a test";
export const testResult = "{day}: {sprouted} of {sown} sprouted, so {band}";
export const testResultHard = "{day}: {sprouted} of {sown} sprouted, {hard} hard, so {band}";
export const partsDifferPointsMost = (rangePct: string | number, allowedPct: string | number) =>
  `! Its parts differ by ${rangePct} points, at most ${allowedPct} are allowed (7 CFR 201.55): test again.`;
export const change = (name: string | number) => `Change ${name}`;
export const change2 = "Change";
export const deleteNamed = (name: string) => `Delete ${name}`;
export const deleteWord = "Delete";
export const noConditionsOfficialTest = (name: string | number) =>
  `No conditions of an official test are published for ${name}.`;
export const howIsTestedOfficially = (name: string | number) => `How ${name} is tested officially`;
export const laidAt = (bed: string, celsius: string, other: string | undefined) =>
  other === undefined ? `${bed}, at ${celsius}.` : `${bed}, at ${celsius} (or ${other} C).`;
export const countedAfter = (firstDays: number | null, lastDays: number | string) =>
  firstDays === null
    ? `Last count after ${lastDays} days.`
    : `First count after ${firstDays} days, last after ${lastDays}.`;
export const hardApart = "Seed that stays hard is counted apart.";
export const freshSeed = (how: string) => `Fresh or dormant seed: ${how}.`;
export const cfrRowOfficialTest = (row: string | number) =>
  `7 CFR 201.58, row ${row}. An official test takes 400 seeds, four parts of 100.`;
export const whatBecomesOfIt = "What becomes of it";
export const nothingLayoutSown = "Nothing in this layout is sown from it.";
export const sownIn = (join: string | number) => `Sown in ${join}. `;
export const showOnTheSheet = "Show on the sheet";
export const lineThroughYears = "Its line through the years";
export const madeOf = "Made of";
export const inItWentTo = "In it went to";
export const thrownAwayButton = "Thrown away";
export const usedUpButton = "Used up";
export const stockAgain = "It is in stock again";
export const split = "Split";
export const sellPassSeedYou =
  "To sell or pass on seed you may need a licence, a label, a test not older than your law asks for, and the right to the variety. Seed law differs: ask your authority.";
export const mixLots = (count: string | number) => `Mix ${count} lots`;
export const becomeOneLotUsed = (join: string | number, name: string | number) =>
  `${join} of ${name} become one lot and are used up. What is mixed cannot be told apart again; test the mixture.`;
export const mixThem = "Mix them";
export const theyDifferentYearsAge =
  "! They are of different years: the age of the mixture is not known until it is tested.";
export const someTreatedAllMixture = "! Some are treated: all of the mixture is treated seed.";
export const moveWhat = (what: string | number) => `Move ${what}`;
export const into = "Into";
export const since = "Since";
export const fromTheStart = "from the start";
export const leftEmptyLayThere = "Left empty: it lay there from the start";
export const thereNoStoragePlace = "There is no storage place yet.";
export const addAStoragePlace = "Add a storage place";
export const addLotSeed = "Add a lot of seed";
export const madePatternTypeAnother = "Made by the pattern; type another if you like";
export const addTheLot = "Add the lot";
export const addTypeNext = "Add and type the next";
export const keptIn = "Kept in";
export const andMore = (value: string | number) => ` and ${value} more`;
export const moveToAPlace = "Move to a place";
export const mixIntoOneLot = "Mix into one lot";
export const theyAreTreated = "They are treated";
export const theyAreUntreated = "They are untreated";
export const onlyLotsOneVariety = "Only lots of one variety can be mixed.";
export const splitCode = (codeText: string | number) => `Split ${codeText}`;
export const holdsPartKeepsTests = (codeText: string | number, amountWords: string | number) =>
  `${codeText} holds ${amountWords}. The part keeps its tests and its age.`;
export const splitOff = "Split off";
export const seeds = "100 seeds";
export const codeOfThePart = "Code of the part";
export const splitIt = "Split it";
export const germinationTestOf = (codeText: string | number) => `Germination test of ${codeText}`;
export const addTheTest = "Add the test";
export const seedsSown = "Seeds sown";
export const sprouted = "Sprouted";
export const normalSeedlingsCountedEnd = "Normal seedlings, counted at the end";
export const lastCount = "Last count";
export const stayedHard = "Stayed hard";
export const tookUpNoWater = "Took up no water; not among the sprouted";
export const days = "Days";
export const temperatureC = "Temperature, C";
export const sproutedInEachPart = "Sprouted in each part";
export const whenLaidOut = "when it was laid out so";
export const fourTwoPartsHeld = "Four or two parts of 100 are held against 7 CFR 201.55";
export const partsAgreePointsApart = (rangePct: string | number, allowedPct: string | number) =>
  `The parts agree: ${rangePct} points apart, ${allowedPct} are allowed`;
export const partsDoNotAgree = (rangePct: string | number, allowedPct: string | number) =>
  `The parts do not agree: ${rangePct} points apart, at most ${allowedPct} are allowed. Test again.`;
export const germinationIs = "{sprouted} of {sown}: germination {band} (95 % sure, exact).";
export const withHardSeed = (band: string) => `With hard seed ${band}.`;
export const seedsSayLittle = (sown: number, spread: number) =>
  `${sown} seeds say little: the truth may lie ${spread} points apart.`;
export const toShow = (wanted: number, all: number | null) =>
  all === null
    ? `To show ${wanted} %: too many seeds even if all come up.`
    : `To show ${wanted} %: ${all} seeds if all come up.`;
export const toShowOr = (wanted: number, all: number | null, more: number, share: number) =>
  all === null
    ? `To show ${wanted} %: too many seeds even if all come up, ${more} if ${share} % do.`
    : `To show ${wanted} %: ${all} seeds if all come up, ${more} if ${share} % do.`;
export const smallLotKeepEnough = "Of a small lot keep enough to sow.";
export const treatment = "Treatment";
export const treatedWith = "Treated with";
export const treatedSeedPoisonPeople =
  "! Treated seed is poison to people and animals: gloves on, never eaten or fed, kept apart and labelled. Its label and local rules decide.";
export const reasonTooLong = (most: number) => `A reason has at most ${most} letters`;

const lotNoun: Noun = { one: "lot", other: "lots" };
export const lotCount = (count: number) => counted(count, lotNoun);
/** The code of the only one, else how many. */
export const lotsNamed = (lots: readonly { readonly code: string }[]) =>
  lots.length > 1 ? lotCount(lots.length) : (lots[0]?.code ?? "");
export const notCounted = (count: number) => `${count} not counted`;
export const inAll = (amounts: readonly string[]) => `Together ${amounts.join(", ")}.`;
export const chooseVariety = "Choose its variety";
export const choosePlace = "Choose a place";
export const choosePlaceFirst = "Choose where it is kept first";
export const ownHarvest = "own harvest";
export const received = "received";
export const crossing = "Crossing";
export const mayHaveCrossed = "may have crossed";
export const lookedThrough = "plants looked through, all true";
export const notKeptApart = "not kept apart";
export const nothingKnown = "nothing known";
export const byItsRecord = (said: string) => `by its record: ${said}`;
export const crossesMayBeIn = (codes: string) =>
  `! Crosses may be in it. Not kept apart while it grew: ${codes}.`;
export const changeCrossing = (code: string) => `Change what is said of crossing in ${code}`;
export const untreated = "untreated";
export const treated = "treated";
export const addedNext = (code: string) => `${code} is on the shelf. Type the next one.`;

/** Titles of steps. */
export const changeCodePattern = "Change how codes of lots are made";
export const changeCode = (code: string) => `Change the code of ${code}`;
export const changeVariety = (code: string) => `Change the variety of ${code}`;
export const changeHarvestYear = (code: string) => `Change the harvest year of ${code}`;
export const noteOn = (code: string) => `Note on ${code}`;
export const changeAmount = (code: string) => `Change the amount of ${code}`;
export const changeSeedsPerGram = (code: string) => `Change seeds per gram of ${code}`;
export const changeMoisture = (code: string) => `Change the moisture of ${code}`;
export const changeOrigin = (code: string) => `Change where ${code} came from`;
export const changeTreatment = (code: string) => `Change the treatment of ${code}`;
export const backInStock = (code: string) => `${code} is in stock again`;
export const deleteLot = (code: string) => `Delete lot ${code}`;
export const moveTo = (lots: string, place: string) => `Move ${lots} to ${place}`;
export const markTreated = (lots: string) => `Mark ${lots} as treated`;
export const markUntreated = (lots: string) => `Mark ${lots} as untreated`;
export const testTitle = (code: string, day: string) => `Germination test of ${code}, ${day}`;

/** Why a lot cannot be kept so. */
export const typeLotCode = "Type the code of the lot";
export const typeMixtureCode = "Type the code of the mixture";
export const typePartCode = "Type the code of the part";
export const codeOfAnother = (code: string) => `${code} is the code of another lot`;
export const amountNotKnown = (code: string) =>
  `The amount of ${code} is not known: weigh or count it first`;
export const typePart = "Type how much is split off";
export const seedsPerGramNotKnown =
  "Seeds in a gram are not known: type the amount as the lot has it";
export const holdsOnly = (code: string, amount: string) => `${code} holds only ${amount}`;
export const typeCountDay = "Type the day of the last count";
export const typeSown = "Type how many seeds were sown";
export const typeSprouted = "Type how many sprouted; none is 0";
export const typeCounts = "Type counts, for example 92 95 90 93";
export const typeEachPart = "Type the count of each part, at least two";

/** Tests and standards. */
export const testOf = (day: string) => `the test of ${day}`;
export const reachesStandard = (standard: string) => `It reaches the standard of ${standard}.`;
export const liesUnderStandard = (standard: string) => `It lies under the standard of ${standard}.`;
export const cannotTell = (standard: string) =>
  `The standard of ${standard} lies within: this test alone cannot tell.`;
export const SUBSTRATES: ReadonlyMap<string, string> = new Map([
  ["B", "between blotters"],
  ["P", "on paper in a covered dish"],
  ["T", "in rolled paper towels"],
  ["S", "in sand or soil"],
  ["TB", "on blotters"],
  ["TS", "on sand"],
  ["C", "in creped paper"],
  ["TC", "on creped paper"],
]);
export const orBetween = ", or ";
export const oneTemperature = (celsius: string) => `${celsius} C`;
export function twoTemperatures(celsius: string): string {
  const [warm = "", cool = ""] = celsius.split("-");
  return `${warm} C for 16 hours, then ${cool} C for 8`;
}

/** Whether it lives. */
export const germinationNow = (band: string, from: string, standard: string) =>
  `Germination now ${band}, ${from}. The standard is ${standard}.`;
export const germinationThen = (band: string, from: string, standard: string) =>
  `Germination ${band}, ${from}. The standard is ${standard}.`;
export const bandNow = "{band} now, {from}.";
export const bandThen = "{band}, {from}.";
export const standardPublished = "The standard is that of 7 CFR 201.31.";
export const standardHalf = "The standard is half, as none is published for it.";

/** Days of the earliest and latest crossing of the standard. */
interface Under {
  readonly earliest: number | null;
  readonly latest: number | null;
  readonly today: number;
}

export function underStandard({ earliest, latest, today }: Under, standard: string): string {
  const year = (day: number) => String(civilFromDay(day).year);
  if (earliest === null) return `Stays above its standard of ${standard} for a hundred years.`;
  if (latest !== null && latest <= today) {
    return `By this estimate it lies under its standard of ${standard}.`;
  }
  if (earliest <= today) {
    return latest === null
      ? `It may lie under its standard of ${standard} already.`
      : `It may lie under its standard of ${standard} already, and surely does by ${year(latest)}.`;
  }
  return latest === null || year(latest) === year(earliest)
    ? `From ${year(earliest)} it may fall under its standard of ${standard}.`
    : `From ${year(earliest)} it may, and by ${year(latest)} it surely will, fall under its standard of ${standard}.`;
}
export const placeSince = (place: string, day: string | null) =>
  day === null ? place : `${place}, since ${day}`;
export const placeFrom = (place: string, day: string | null) =>
  day === null ? place : `${place} from ${day}`;
export const choose = "choose";
export const suchAsGrams = "such as 12.5 g";
