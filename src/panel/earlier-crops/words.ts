/** Words of earlier-crops on the screen. */

export const changeAnEarlierCrop = "Change an earlier crop";
export const addAnEarlierCrop = "Add an earlier crop";
export const variety = "Variety";
export const ownVarietyNoRisk =
  "Its own variety is no risk to a planting; without a name it counts as another.";
export const yearField = "Year";
export const whenHarvestedShedSeed = "When it was harvested, or shed seed.";
export const wentToSeed = "Went to seed";
export const note = "Note";
export const apply = "Apply";
export const addToThePlan = "Add to the plan";
export const earlierCrops = "Earlier crops";
export const grewGroundBeforeSeason =
  "What grew on this ground before this season, in all layouts alike. Seed it shed may come up among plantings kept for seed; the checks say where.";
export const entered = "Entered";
export const noneEnteredYet =
  "None entered yet. Add them one by one, or take them over from the plan of an earlier year below.";
export const deleteAll = (count: string | number) => `Delete all ${count}`;
export const crops = "Crops";
export const kindField = "Kind";
export const where = "Where";
export const change = "Change";
export const changeName = (name: string | number) => `Change ${name}`;
export const deleteCrop = (name: string) => `Delete ${name}`;
export const deleteWord = "Delete";
export const takeOverPlanFile = "Take over from a plan file";
export const plotsEarlierSeasonBecome =
  "The plots of an earlier season become earlier crops of the year they were harvested in: as its field record has them, else as they were planned in its chosen layout.";
export const planFile = "Plan file";
export const seasonLaterThanPlans = (name: string | number, yearText: string | number) =>
  `${name} is of season ${yearText}, which is later than this plan’s: nothing of it has grown yet.`;
export const nothingToAdd = "Nothing to add";
export const add = (cropCount: string | number) => `Add ${cropCount}`;
export const cancel = "Cancel";
export const itsYears = "Its years";
export const yearsOfTheBed = "Years of the bed";
export const grew = "Grew";
export const hasThemAll = " has them all.";
export const changeAMark = "Change a mark";
export const markDiseaseGround = "Mark a disease on the ground";
export const disease = "Disease";
export const itsName = "Its name";
export const seenOn = "Seen on";
export const addTheMark = "Add the mark";
export const marksOnTheGround = "Marks on the ground";
export const changeTheMarkOn = (markName: string | number, place: string | number) =>
  `Change the mark ${markName} on ${place}`;
export const deleteTheMarkOn = (markName: string | number, place: string | number) =>
  `Delete the mark ${markName} on ${place}`;
export const markADisease = "Mark a disease";
export const bedsOf = (name: string | number) => `Beds of ${name}`;
export const yearsOfTheGround = "Years of the ground";
export const ground = "Ground";
export const yearShownSheet = "Year shown on the sheet";
export const thisSeason = (season: string | number) => `${season}, this season`;
export const whatStoodHere = (span: string | number) => `what stood here, ${span}`;
export const hide = "Hide";
export const years = "Years";
export const addCrops = (names: string) => `Add ${names}`;
export const addFrom = (crop: string, plan: string) => `Add ${crop} from ${plan}`;
export const addedFrom = (crop: string, plan: string) => `${crop} added from ${plan}.`;
export const deleteMark = (mark: string) => `Delete the mark ${mark}`;
export const whereItIs = "where it is now";
export const wholeBeds = "whole beds";
export const wholeBed = "a whole bed";
export const typedRectangle = "a rectangle, typed";
export const sheetShowsSeason = (season: string) => `The sheet shows season ${season}.`;
export const sheetShowsYear = (year: number) => `The sheet shows ${year}.`;
