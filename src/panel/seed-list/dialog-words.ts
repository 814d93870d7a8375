/** Words of the parts of seed-list that are fetched when they are opened. */
import { type Noun, counted, formOf } from "../../core/words/plurals.ts";

const plantingNoun: Noun = { one: "planting", other: "plantings" };
const lotNoun: Noun = { one: "lot of seed", other: "lots of seed" };

export const publishedFigure = "Published figure";
export const allFiguresSources = (nameText: string | number) =>
  `All figures of ${nameText}, with sources`;
export const flowerForm = "Flower form";
export const keptApartBy = (distance: string | number) => `· kept apart by ${distance}`;
export const takenUntilYouSay = (nameText: string | number) =>
  `! Taken as ${nameText} until you say: look at a plant or ask whoever gave the seed.`;
export const heatSowingFlower = "Heat from sowing to flower";
export const kind = (heatWords: string | number) => `Kind: ${heatWords}.`;
export const noHeatKnownKind = "No heat is known of the kind.";
export const countedSitesClimateSown = "Counted on the site's climate, for what is sown in place.";
export const countedOnceSiteClimate = "Counted once the site has a climate.";
export const typeBaseDegreeDays = "Type base and degree-days; until then it is not used.";
export const asTheKind = "As the kind";
export const giveOwnHeat = "Give own heat";
export const degrees = "Degrees";
export const method = "Method";
export const base = "Base";
export const cap = "Cap";
export const none = "none";
export const days = (unit: string | number) => `${unit}-days`;
export const placeAVariety = "Place a variety";
export const thereNoBedLayout = "There is no bed in this layout yet.";
export const seedListEmpty = "The seed list is empty.";
export const newBedSize = "New bed by its size";
export const addAVariety = "Add a variety";
export const varietyField = "Variety";
export const inBed = "In bed";
export const plants = "Plants";
export const start = "Start";
export const on = "On";
export const place = "Place";
export const seedWanted = "Seed wanted";
export const cleanSeedSeasonRenew =
  "Clean seed from this season; To renew reckons the plants from it";
export const keptInReserve = "Kept in reserve";
export const leftShelfWhateverSown = "To be left on the shelf, whatever is sown";
export const whyThisSeason = "Why this season";
export const seedListAsCsv = "Seed list as CSV";
export const nameHeading = "name";
export const kindHeading = "kind";
export const varietySample = "Old Ferry, tomato, 10\nKettle Dun, common bean, 60";
export const headingsNeeded =
  "Headings {name} and {kind}, in a spreadsheet; typed lines need none. A row whose name and kind are in the seed list changes that variety, others are added; empty cells leave things as they are.";
export const cancel = "Cancel";
export const edit = (nameText: string | number) => `Edit ${nameText}`;
export const nameField = "Name";
export const plantsWanted = "Plants wanted";
export const hybridSeedDoesNot = "It is a hybrid (its seed does not come true)";
export const apply = "Apply";
export const addTypeNext = "Add and type the next";
export const addSeedList = "Add to the seed list";
export const ownIsolationDistance = "Own isolation distance";
export const asPublished = "as published";
export const withoutOneAtLevel = (level: string | number, requirementWords: string | number) =>
  `Without one, at ${level} level: ${requirementWords}`;
export const daysSowingFlower = "Days from sowing to flower";
export const daysSettingOutFlower = "Days from setting out to flower";
export const daysInFlower = "Days in flower";
export const byTheRule = "by the rule, at the plan's level";
export const noDistanceKnown = "no distance known";
export const typeDegrees = (unit: string, example: number) =>
  `Type degrees ${unit}, for example ${example}`;
export const setOut = "set out";
export const sownInPlace = "sown in place";
export const notSaidYet = "not said yet";
export const thisVariety = "this variety";
export const rowForEach = (count: number) =>
  formOf(count, {
    one: "One row for the one variety, with a heading row.",
    other: `One row for each of the ${count} varieties, with a heading row.`,
  });
export const varietyList = "a list of varieties as CSV";
export const nameColumn = "Name";
export const kindColumn = "Kind";
export const plantsColumn = "Plants";
export const effectColumn = "What it does";
export const addedNext = (variety: string) => `${variety} is in the seed list. Type the next one.`;
export const changeVariety = (variety: string) => `Change ${variety}`;
export const deleteVariety = (variety: string) => `Delete ${variety}`;
export function deleteVarietyWith(plantings: number, lots: number): string {
  const planted = counted(plantings, plantingNoun);
  const seed = counted(lots, lotNoun);
  if (plantings === 0) return lots === 0 ? "Delete the variety" : `Delete it and its ${seed}`;
  return lots === 0 ? `Delete it and its ${planted}` : `Delete it and its ${planted} and ${seed}`;
}
export const typeVarietyName = "Type the variety's name";
export const pickKind = "Pick the kind it belongs to";
export const alreadyListed = (variety: string) => `${variety} is already in the seed list`;
export const suchAsGrams = "such as 12.5 g";
