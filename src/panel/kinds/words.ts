/** Words of kinds on the screen. */

export const kindField = "Kind";
export const searchCommonBotanicalName = "Search by common or botanical name, or flower form";
export const kindsKnownTypeFew = (count: string | number) =>
  `${count} kinds are known; type a few letters.`;
export const severalSpecies = (name: string) =>
  `Several species are called “${name}”, each crossing with others: choose which.`;
export const noKindNameKnown = "No kind of that name is known here.";
export const addKindYourOwn = (trim: string | number) => `Add “${trim}” as a kind of your own`;
export const changeKind = "Change kind";
export const change = "Change";
export const kindGroup = (group: string | number) => `${group}-kind`;
export const name = "Name";
export const botanicalName = "Botanical name";
export const crossingGroup = "Crossing group";
export const kindsDifferentGroupsDo = "Kinds of different groups do not cross.";
export const species = "Species";
export const oneSpeciesCrossesFreely =
  "One species crosses freely with itself; nothing is known of another, so it counts in full.";
export const lifeCycle = "Life cycle";
export const pollenCarriedBy = "Pollen carried by";
export const breeding = "Breeding";
export const ownFiguresFor = (nameText: string | number) => `Own figures for ${nameText}`;
export const edit = (nameText: string | number) => `Edit ${nameText}`;
export const addAKind = "Add a kind";
export const apply = "Apply";
export const addToThePlan = "Add to the plan";
export const isolationDistance = "Isolation distance";
export const atLevel = (level: string | number) => `At ${level} level`;
export const asPublished = "as published";
export const notKnown = "not known";
export const source = "Source";
export const bookNeighbourOwnTrials = "a book, a neighbour, own trials";
export const timeInDays = "Time, in days";
export const fromSowingToFlower = "From sowing to flower";
export const settingOutFlower = "From setting out to flower";
export const inFlower = "In flower";
export const flowerRipeSeed = "From flower to ripe seed";
export const plants = "Plants";
export const spacingInTheRow = "Spacing in the row";
export const bothSpacingsNeededNumber = "Both spacings are needed for the number of plants.";
export const spacingBetweenRows = "Spacing between rows";
export const seedPlantsNeeded = "Seed plants needed";
export const ownKindsAndFigures = "Own kinds and figures";
export const kindsMissingHereYour =
  "Kinds that are missing here, and your own figures for kinds that are not. They are kept in the plan and travel with its file.";
export const ownFiguresKnownKind = "Own figures for a known kind";
export const noneYet =
  "None yet. Add a kind that is not on the list, or distances of your own for one that is.";
export const placePublished = ", in place of what is published";
export const edit2 = "Edit";
export const deleteWord = (nameText: string | number) => `Delete ${nameText}`;
export const deleteWord2 = "Delete";
export const sourceTooLong = (most: number) => `A source has at most ${most} letters`;
export const carriedByInsects = "insects";
export const carriedByWind = "wind";
export const carriedByBoth = "insects and wind";
export const selfing = "selfing";
export const mostlySelfing = "mostly selfing";
export const outcrossing = "outcrossing";
export const anotherSpecies = "another one";
export const typeKindName = "Type the kind's name";
export const kindKnownAlready = (kind: string) =>
  `${kind} is known here already: give yours another name, or own figures to ${kind}`;
export const groupOf = (kind: string) => `that of ${kind}`;
export const ownGroup = "a group of its own";
export const distanceAt = (distance: string, levelName: string) => `${distance} ${levelName}`;
export const noOwnDistance = "no distance of its own";
