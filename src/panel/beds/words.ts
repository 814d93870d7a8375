/** Words of beds on the screen. */
import type { NumberingCorner } from "../../core/edits/number-beds.ts";
import { type Noun, counted, formOf, listOf } from "../../core/words/plurals.ts";

const objectNoun: Noun = { one: "object", other: "objects" };
const bedNoun: Noun = { one: "bed", other: "beds" };
const plantingNoun: Noun = { one: "planting", other: "plantings" };
const varietyNoun: Noun = { one: "variety", other: "varieties" };

export const copyInRows = "Copy in rows and columns";
export const copyDirections = (names: string) =>
  `${names}: directions are those of the first of them, across and along its length.`;
export const addsObjects = (added: number) => `Adds ${counted(added, objectNoun)}.`;
export const addTheCopies = "Add the copies";
export const across = "Across";
export const along = "Along";
export const gapAcross = "Gap across";
export const gapAlong = "Gap along";
export const toTheLeft = "To the left instead of the right";
export const towardsNearEnd = "Towards the near end instead of away";
export const cutBedInTwo = (codeText: string) => `Cut bed ${codeText} in two`;
export const nearPart = "Length of the near part";
export const bedIsLong = (length: string) => `The bed is ${length} long.`;
export const pathBetween = "Path between";
export const pathTaken = "Taken from the far part.";
export const cutTheBed = "Cut the bed";
export const lineUpAndSpace = "Line up and space";
export const lineUpAlong = "Line up along";
export const lineUpAlongHint =
  "The first stays where it is; by the sheet, the outermost sides count.";
export const lineUp = "Line up";
export const gap = "Gap";
export const equal = "equal";
export const gapHint =
  "From edge to edge. Left empty, the outermost two stay and the gaps between become equal.";
export const space = "Space";
export const spaceAcross = "Space across";
export const spaceAlong = "Space along";
export const numberTheBeds = "Number the beds";
export const whichBeds = "Which beds";
export const applyTheNewCodes = "Apply the new codes";
export const firstBed = "First bed";
export const firstBedHint =
  "As seen along the beds; near is the foot of the sheet where beds are not turned.";
export const order = "Order";
export const codes = "Codes";
export const letters = "Letters";
export const firstNumber = "First number";
export const codesTaken = (codeList: readonly string[]) =>
  formOf(codeList.length, {
    one: `${listOf(codeList)} is taken by something that keeps its code: choose other letters or another number.`,
    other: `${listOf(codeList)} are taken by something that keeps its code: choose other letters or another number.`,
  });
export const noCodeChanges = "All beds have these codes already.";
export const codesChange = (changed: number, beds: number, plantings: number) =>
  `${changed} of ${counted(beds, bedNoun)} and ${counted(plantings, plantingNoun)} get another code.`;
export const oldCodesWritten =
  "! Stakes, packets and maps already written carry the old codes. Codes of plantings written by hand stay.";
export const oldAndNewCodes = "Old and new codes";
export const rename = (old: string) => `Rename ${old}`;
export const name = "Name";
export const code = "Code";
export const codeHint = "What stands on the stake.";
export const apply = "Apply";
export const shareBedAmongVarieties = (codeText: string) => `Share bed ${codeText} among varieties`;
export const shares = "Shares";
export const gapBetweenTwo = "Gap between two";
export const addThePlantings = "Add the plantings";
export const seedListEmpty = "The seed list is empty: add varieties to it first.";
export const varietiesInOrder = "Varieties, in the order from the near end";
export const plantsPlaced = (placed: number, wanted: number) =>
  `${placed} of ${wanted} plants placed`;
export const variety = "Variety";
export const from = "From";
export const to = "To";
export const plants = "Plants";
export const plantsOfWanted = (placed: number, wanted: number) => `${placed} of ${wanted} wanted`;
export const copyTitle = (names: string, rows: number, columns: number) =>
  `Copy ${names} in ${rows} x ${columns}`;
export const copiesNothing = "One row of one is what there is already";
export const copiesTooMany = (added: number, most: number) =>
  `That would add ${added} objects; at most ${most} are added at once`;
export const alongFirst = "the first selected";
export const alongSheet = "the sheet";

/** Rows of equal beds. */
export const rowsOfBeds = "Rows of equal beds";
export const rowsOfBedsInstead = "Rows of equal beds ...";
export const bedsToTheRight = "side by side, to the right";
export const bedsToTheLeft = "side by side, to the left";
export const bedsAway = "end to end, away";
export const bedsTowardsYou = "end to end, towards you";
export const oneSeries = "one series through all rows";
export const letterForRow = "a letter for each row";
export const drawBeds = (count: number) => `Draw ${counted(count, bedNoun)}`;
export const bedsTooMany = (most: number) => `At most ${most} beds are drawn at once.`;
export const bedsOffPlot = (list: readonly string[]) =>
  formOf(list.length, {
    one: `${listOf(list)} reaches out of the plot: make it shorter, or move it.`,
    other: `${listOf(list)} reach out of the plot: take fewer, make them shorter, or move them.`,
  });
export const bedsShown = (count: number, codeText: string) =>
  `${counted(count, bedNoun)}: ${codeText}. Shown on the sheet as typed; nothing is kept yet.`;
export const addTheBeds = "Add the beds";
export const bedsInRow = "Beds in a row";
export const bedRows = "Rows";
export const bedWidth = "Bed width";
export const bedLength = "Bed length";
export const pathBetweenBeds = "Path between beds";
export const pathBetweenRows = "Path between rows";
export const bedDirection = "Direction of the beds";
export const bedDirectionHint = "As seen when looking along the first bed.";
export const turnClockwise = "Turn, clockwise";
export const firstCode = "First code";
export const firstCodeHint = "The others count on from it; codes that are taken are passed over.";
export const firstCodeTooLong = "A code of at most 34 letters leaves room for its number";
export const numberedBack = "Every second row is numbered back, as one walks";

/** A bed cut in two. */
export const liesAcrossCut = (codeList: readonly string[]) =>
  formOf(codeList.length, {
    one: `${listOf(codeList)} lies across the cut: move it first, or cut elsewhere.`,
    other: `${listOf(codeList)} lie across the cut: move them first, or cut elsewhere.`,
  });
export const partsNeedLength = (length: string) =>
  `Both parts must have a length: the bed is ${length} long.`;
export const codeBecomes = (was: string, is: string) => `${was} becomes ${is}`;
export const partsAre = (parts: {
  readonly near: string;
  readonly nearLength: string;
  readonly far: string;
  readonly farLength: string;
}) =>
  `${parts.near} keeps ${parts.nearLength}; the far part becomes ${parts.far}, ${parts.farLength}.`;
export const stakesFollow = (changes: readonly string[]) =>
  `${changes.join(", ")}: stakes must follow.`;

/** Ground beside the beds. */
export const addGround = "Add ground";
export const whatItIs = "What it is";
export const shape = "Shape";
export const lineShape = "a line with a width";
export const rectangleShape = "a rectangle";
export const roundShape = "round";
export const placeShape = "a single place";
export const nameNeeded = "A name is needed to tell it from others";
export const addIt = "Add it";
export const drawInstead = "Draw it on the sheet instead";
export const diameter = "Diameter";
export const canopyHint = "Of the canopy, across from tip to tip.";
export const turnHint = "At 0° its length runs up the sheet, at 90° across.";

/** A new bed. */
export const newBed = "New bed";
export const rectangleBed = "rectangle";
export const addTheBed = "Add the bed";
export const codeNeeded = "A code is needed: it stands on the stake";
export const codeTooLong = "A code of at most 40 letters fits a stake";
export const codeTaken = (taken: string) => `${taken} is taken`;

/** Codes in walking order. */
export const cornerNames: Readonly<Record<NumberingCorner, string>> = {
  "near left": "near left",
  "near right": "near right",
  "far left": "far left",
  "far right": "far right",
};
export const thereAndBack = "there along one row, back along the next";
export const sameSide = "every row from the same side";
export const numberBeds = (count: number) => `Number ${counted(count, bedNoun)}`;
export const theSelected = (count: number) => `the ${count} selected`;
export const allOf = (count: number) => `all ${count}`;
export const prefixTooLong = "At most 20 letters go before the number";

export const renameBedTo = (old: string, next: string) => `Rename bed ${old} to ${next}`;
export const renameTo = (old: string, next: string) => `Rename ${old} to ${next}`;

/** A bed shared among varieties. */
export const shareByWanted = "by the plants still wanted";
export const shareEqually = "the same length each";
export const noFreeGround = "This bed has no free ground that could be shared out.";
export const tickVarieties = "Tick the varieties that are to share the bed.";
export const gapsTakeAll = "The gaps take all the free ground: fewer varieties or smaller gaps.";
export const shareBedAmong = (bed: string, varieties: number) =>
  `Share bed ${bed} among ${counted(varieties, varietyNoun)}`;
