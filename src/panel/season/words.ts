/** Words of season on the screen. */

export const climateOfTheSite = "Climate of the site";
export const temperaturesNearestStationBloom =
  "With temperatures of the nearest station, bloom is counted in heat where the heat to first flower is known. Normals are the usual year: in a warm one bloom comes earlier, in a cold one later.";
export const temperaturesIn = "Temperatures in";
export const apply = "Apply";
export const deleteTheClimate = "Delete the climate";
export const frosts = "Frosts";
export const frostDatesAskedNever =
  "Frost dates are asked for, never worked out from normals: a mean says little about the one cold night. Take them from your own notes, a neighbour or the station.";
export const stationAndYears = "Station and years";
export const source = "Source";
export const pasteATable = "Paste a table";
export const twelveRowsLowestHighest =
  "Twelve rows of lowest and highest, or two rows of twelve months; names and yearly means may stand beside.";
export const fillTheTable = "Fill the table";
export const andMore = (value: string | number) => `and ${value} more`;
export const recordOfDays = "Record of days";
export const textFileColumnsDate =
  "A text file with the columns date (2027-05-20), min, max. Recorded days go before the normals; without normals other years get the mean of the same dates. With several years, up to forty, findings that heat and time decide can be tried on each of them.";
export const noRecord = "No record.";
export const readAFile = "Read a file (";
export const deleteTheRecord = "Delete the record";
export const monthlyMeansDailyTemperatures = "Monthly means of daily temperatures";
export const month = "Month";
export const meanDailyLowest = (unit: string | number) => `Mean daily lowest, °${unit}`;
export const meanDailyHighest = (unit: string | number) => `Mean daily highest, °${unit}`;
export const lastSpringFrost = "Last spring frost";
export const firstAutumnFrost = "First autumn frost";
export const lotsSeasonBefore = "Lots of the season before";
export const planNotStartedSeason = "This plan was not started from the season before.";
export const lookingAmongKeptPlans = "Looking among the kept plans ...";
export const planStartedNotKept = (name: string | number) =>
  `"${name}", from which this plan was started, is not kept in this browser. Choose its file.`;
export const planFile = "Plan file";
export const add = (count: string | number) => `Add ${count}`;
export const theSeasonAfter = (name: string | number) => `The season after ${name}`;
export const makePlanSeason = (name: string | number) => `Make the plan of season ${name}`;
export const comesAlong = "Comes along";
export const layoutGrown = "Layout grown";
export const bedsPlotsTakenOthers =
  "Its beds and plots are taken; the others stay in this season's plan.";
export const open = (titleText: string | number) => `Open ${titleText}`;
export const planCouldNotMade = (fault: string | number) => `The plan could not be made: ${fault}.`;
export const whatStandsAround = "What stands around";
export const hedgesBuildingsLikeStay =
  "Hedges, buildings and the like stay. Of a pollen source to be asked again the bloom dates, variety, cutting and cover are dropped: until they are known again, none of them keeps anything apart.";
export const sources = "Sources";
export const pollenSource = "Pollen source";
export const nextSeason = "Next season";
export const nextSeasonLabel = (label: string | number) => `${label}: next season`;
export const becamePlots = "What became of the plots";
export const becamePlotsName = (name: string | number) => `What became of the plots of ${name}`;
export const plots = "Plots";
export const plot = "Plot";
export const variety = "Variety";
export const plants = "Plants";
export const whatBecameOfIt = "What became of it";
export const seed = "Seed";
export const by = "By";
export const whatBecameOfItCode = (code: string | number) => `${code}: what became of it`;
export const seedShed = (code: string | number) => `${code}: seed shed`;
export const record = "record";
export const plan = "plan";
export const headSeedList = "Head of the seed list";
export const headsTheSeedList = "Heads the seed list";
export const nothingWaitsStoreNo =
  "Nothing waits in store, and no lot on the shelf asks to be renewed.";
export const takeOffShelfSeasons =
  "Take off the shelf what this season's plots were sown with, by the sowing list";
export const leaveOffWhereLots = (sownWords: string | number) =>
  `${sownWords}. Leave it off where lots were weighed or counted since.`;
export const wantManyPlantsAgain = "Want as many plants again of what need not be renewed";
export const titleField = "Title";
export const seasonField = "Season";
export const firstDay = "First day";
export const lastDay = "Last day";
export const seasonCalendarOf = (name: string | number) => `Season calendar of ${name}`;
export const seasonDatesBloomSeed = (titleText: string | number, name: string | number) =>
  `${titleText}, season ${name}. Dates of bloom and seed are estimates; covers and roguing are set 3 days before the earliest flower.`;
export const downloadCalendarFileIcs = "Download calendar file (.ics)";
export const print = "Print";
export const fileHoldsListedHere =
  "The file holds what is listed here. Importing a newer one into the same calendar moves the dates; it adds nothing twice. A tick is written into the field record with today's date; taken away, the entry is struck out.";
export const daysAsGrown = (day: string) =>
  `As grown on ${day}: what was seen in flower, covered or cleared has its own days here, and what follows from them.`;
export const fileHoldsPlanned =
  "The file holds the days as planned. A tick is written into the field record with today's date; taken away, the entry is struck out.";
export const noJobsGivePlantings =
  "No jobs: give plantings a start or bloom dates, and they are listed here by week.";
export const jobsListed = "Jobs listed";
export const caution = (cautionText: string | number) => ` caution: ${cautionText}`;
export const thisSeasonsPlan = "This season's plan";
export const staysAmongKeptPlans = (titleText: string | number) =>
  `"${titleText}" stays as it was, among the kept plans of this browser. `;
export const liesFileWell = "It lies in a file as well.";
export const noFileStandsNow = "It is in no file as it stands now; a file is the archive.";
export const saveFileFirst = "Save it to a file first";
export const autumnDay = "12 Oct";
export const originTooLong = (most: number) => `It has at most ${most} letters`;
export const weekdays = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"] as const;
export const weekText = (week: number, from: string, to: string) =>
  `Week ${week}: ${from} to ${to}`;
export const setClimate = "Set the climate of the site";
export const deleteClimateStep = "Delete the climate";
export const recordTooLarge = (file: string) =>
  `${file}: larger than 2 MB, expected one line for each day.`;
export const setSpringFrost = "Set last spring frost";
export const setAutumnFrost = "Set first autumn frost";
export const addLotsOf = (lots: string, season: string) => `Add ${lots} of season ${season}`;
export const nextIsOpen = (next: string, before: string) =>
  `"${next}" is made and open. "${before}" stays as it was.`;
export const planUnreadable = "That plan cannot be read; see Kept plans.";
export const seasonNeedsName = "A season needs a name, for example 2028";
export const planNeedsTitle = "A plan needs a title";
export const seasonNeedsFirst = "A season needs a first day";
export const seasonNeedsLast = "A season needs a last day";
export const otherPlan = (file: string, got: string, expected: string) =>
  `${file} is "${got}", expected "${expected}".`;
