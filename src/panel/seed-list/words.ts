/** Words of seed-list on the screen. */

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
