/** Words of the parts of particulars that are fetched when they are opened. */
import { type Noun, counted, formOf } from "../../core/words/plurals.ts";

const plantNoun: Noun = { one: "plant", other: "plants" };
const rowNoun: Noun = { one: "row", other: "rows" };
const bedNoun: Noun = { one: "bed", other: "beds" };

export const regulationsHeading = "Regulations let the distance change";
export const tickHint =
  "Tick only what holds of every pollen source near it. It is kept with the planting.";
export const distanceIsTyped = "A distance is typed here, so nothing below changes it.";
export const recordedNotOffered = (id: string) =>
  `${id} is recorded here but not offered to this kind, so it changes nothing.`;
export const deleteWord = "Delete";
export const borderRows = "Border rows";
export const sizeOfTheField = "Size of the field";
export const small = "small";
export const bed = "Bed";
export const bedHeading = "Bed {code}";
export const code = "Code";
export const numberAllTheBeds = "Number all the beds in walking order";
export const bedCode = (codeText: string | number) => `bed ${codeText}`;
export const note = "Note";
export const shareAmongVarieties = "Share among varieties";
export const cutInTwo = "Cut in two";
export const plantingsInIt = "Plantings in it";
export const none = "none";
export const corners = (count: number) => `${count} corners`;
export const cornerRight = (value: string | number) => `Corner ${value}, right`;
export const cornerUp = (value: string | number) => `Corner ${value}, up`;
export const addCornerAfterCorner = (value: string | number) =>
  `Add a corner after corner ${value}`;
export const addAfter = "Add after";
export const deleteCorner = (value: string | number) => `Delete corner ${value}`;
export const onTheGround = "On the ground";
export const clearedOn = "Cleared on";
export const sownUnderGlass = "Sown under glass";
export const cover = "Cover";
export const purityLevel = "Purity level";
export const ownDistance = "Own distance";
export const asPublished = "as published";
export const needs = (requirementWords: string | number) => `Needs ${requirementWords}`;
export const besidePublished = (needsText: string, publishedText: string) =>
  `${needsText} Published: ${publishedText}`;
export const keepApart = "Keep apart from other lots of this variety";
export const locked = "Locked: is not moved, resized or deleted";
export const someLocked = (count: number, of: number) =>
  `Locked: is not moved, resized or deleted (${count} of ${of} are)`;
export const makeOutline = "Make it an outline whose corners can be moved one by one";
export const diameter = "Diameter";
export const ground = "Ground";
export const areaAndEdge = (area: string, edge: string) => `${area}, ${edge} around`;
export const plants = "Plants";
export const rows = "Rows";
export const plantsInARow = "Plants in a row";
export const lastRowShort = (plantCount: number, rowCount: number) =>
  `${counted(plantCount, plantNoun)} do not divide by ${rowCount} rows: the last row holds fewer.`;
export const makeItLong = (length: string, plantCount: number) =>
  `Make it ${length} long: takes ${counted(plantCount, plantNoun)}`;
export const needsMoreBed = (plantCount: number, length: string, rowCount: number, free: string) =>
  formOf(plantCount, {
    one: `${plantCount} plant needs ${length} in ${counted(rowCount, rowNoun)}; ${free} are free here.`,
    other: `${plantCount} plants need ${length} in ${counted(rowCount, rowNoun)}; ${free} are free here.`,
  });
export const plantThoseThatFit = (fits: string | number) => `Plant the ${fits} that fit`;
export const variety = "Variety";
export const plantingHeading = "Planting {code}";
export const purpose = "Purpose";
export const place = "Place";
export const bloom = "Bloom";
export const isolation = "Isolation";
export const records = "Records";
export const lot = "Lot";
export const whatTheyAre = "What they are";
export const flowering = "Flowering";
export const bedsTogether = "Beds together";
export const plantingsTogether = "Plantings together";
export const surroundingsTogether = "Surroundings together";
export const bedCount = (count: number) => counted(count, bedNoun);
export const differs = "differs";
export const plantsInEach = "Plants in each";
export const start = "Start";
export const fromNearEnd = "From near end";
export const lengthAlongBed = "Length along bed";
export const bedLengthAndFree = (formatLength: string | number, free: string | number) =>
  `The bed is ${formatLength} long. Free beside this planting: ${free}.`;
export const slideAlongItsBed = (codeText: string | number) => `Slide ${codeText} along its bed`;
export const slideTo = "Slide to";
export const name = "Name";
export const whatItIs = "What it is";
export const slopeHint =
  "The ground falls the way its arrow points: along its length. Turn it to point downhill.";
export const canopyAcross = "Canopy, across";
export const aSinglePlace = "a single place";
export const unknown = "unknown";
export const bloomDates = "Bloom dates";
export const everyYear = "The same every year, and not to be asked again for the next season";
export const lotCodesTooLong = (most: number) => `The codes of lots have at most ${most} letters`;

/** Of what is selected. */
export const lineUpAndSpace = "Line up and space";
export const showOnSheet = "Show on the sheet";
export const placeVariety = "Place a variety";
export const deleteSelected = (names: string) => `Delete ${names}`;

export const bedIsFull = (bedText: string) => `Bed ${bedText} is full.`;
export const bedHasLess = (bedText: string, free: string, plantingText: string, needed: string) =>
  `Bed ${bedText} has ${free} free in one piece; ${plantingText} needs ${needed}.`;
export const inNoBed = "in no bed";
export const asThePlan = (level: string) => `as the plan (${level})`;
export const nearEnd = "Near end";
export const farEnd = "Far end";
export const upTo = (neighbour: string) => `Up to ${neighbour}`;
export const sizeNeeded = "A size must be more than nothing";
export const nameNeeded = "A name is needed to tell it from others";
export const threeCornersStay = "Three corners must stay";
export const wouldGive = (problem: string) => `That would give ${problem}`;
export const typeArea = "Type a size, for example 0.5 ha or 2 acres";

/** What a regulation's change of the distance does here. */
export const idleNoDistance = "Changes nothing: no distance is known here.";
export const idleOwnDistance =
  "Changes nothing: the distance in force is your own, and this shortens only the figure of its own regulation.";
export const idleOtherSource = (source: string) =>
  `Changes nothing: the distance in force is from another source (${source}), and this shortens only the figure of its own regulation.`;
export const lessByRows = "less, by the number of border rows";
export const conditionNotMet = "changes nothing while its condition is not met";
export const bedFull = (bedText: string) => `${bedText}, full`;
export const bedFree = (bedText: string, length: string) => `${bedText}, ${length} free`;
export const hectaresText = (hectares: number) => `${hectares} ha`;
export const acresText = (acres: number) => `${acres} acres`;
