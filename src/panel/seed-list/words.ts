/** Words of seed-list on the screen. */
import { type Noun, counted } from "../../core/words/plurals.ts";

const varietyNoun: Noun = { one: "variety", other: "varieties" };
const plantNoun: Noun = { one: "plant", other: "plants" };

export const seedList = "Seed list";
export const varietiesRenewSeasonStand =
  "Add the varieties to renew this season: they stand here, with the plants placed of those wanted.";
export const noVarietyNameKind = "No variety of that name or kind. Type less of it, or add it.";
export const addAVariety = "Add a variety";
export const readSaveCsv = "Read or save as CSV";
export const varietyOrKind = "Variety or kind";
/** Short: the field is narrow, and its label says the rest. */
export const find = "Find";
export const orderSeedList = "Order of the seed list";
export const showMore = (count: number) => `Show ${count} more`;
export const place = "Place";
export const placeInABed = (name: string | number) => `Place ${name} in a bed`;
export const show = "Show";
export const showPlantingsOf = (name: string | number) => `Show plantings of ${name}`;
export const line = "Line";
export const lineThroughYears = (name: string | number) => `Line of ${name} through the years`;
export const edit = "Edit";
export const editName = (name: string | number) => `Edit ${name}`;
export const orderNames = {
  toPlace: "To place first",
  name: "By name",
  kind: "By kind",
  listed: "As added",
} as const;
export const unknownKind = (id: string) => `unknown kind "${id}"`;
export const hybrid = "hybrid";
export const noVarietiesYet = "no varieties yet";
export const allPlaced = (count: number) => `${counted(count, varietyNoun)}, all placed`;
export const stillToPlace = (count: number, short: number) =>
  `${counted(count, varietyNoun)}, ${short} still to place`;
export const plantCount = (count: number) => counted(count, plantNoun);
export const placedOf = (placed: number, wanted: number) => `${placed} of ${wanted}`;
export const waits = "waits";
