/** Words of the parts of particulars that are fetched when they are opened. */

export const regulationsLetDistanceChange = "Regulations let the distance change";
export const tickOnlyHoldsEvery =
  "Tick only what holds of every pollen source near it. It is kept with the planting.";
export const distanceTypedHereNothing = " A distance is typed here, so nothing below changes it.";
export const recordedHereButNot = (id: string | number) =>
  `${id} is recorded here but not offered to this kind, so it changes nothing. `;
export const deleteWord = "Delete";
export const borderRows = "Border rows";
export const sizeOfTheField = "Size of the field";
export const small = "small";
export const bed = "Bed";
export const bed2 = "Bed ";
export const code = "Code";
export const numberAllTheBeds = "Number all the beds";
export const inWalkingOrder = " in walking order.";
export const bedCode = (codeText: string | number) => `bed ${codeText}`;
export const note = "Note";
export const shareAmongVarieties = "Share among varieties";
export const cutInTwo = "Cut in two";
export const plantingsInIt = "Plantings in it";
export const none = "none";
export const corners = (count: string | number) => `${count} corners`;
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
export const keepApartOtherLots = "Keep apart from other lots of this variety";
export const lockedNotMovedResized = (part: string | number) =>
  `Locked: is not moved, resized or deleted${part}`;
export const makeItAnOutline = "Make it an outline";
export const whoseCornersCanMoved = " whose corners can be moved one by one.";
export const diameter = "Diameter";
export const ground = "Ground";
export const around = (formatArea: string | number, formatLength: string | number) =>
  `${formatArea}, ${formatLength} around`;
export const plants = "Plants";
export const rows = "Rows";
export const plantsInARow = "Plants in a row";
export const plantsDoNotDivide = (plantsText: string | number, rowsText: string | number) =>
  `${plantsText} plants do not divide by ${rowsText} rows: the last row holds fewer.`;
export const makeItLongTakes = (formatLength: string | number, plantsText: string | number) =>
  `Make it ${formatLength} long: takes ${plantsText}`;
export const plantsNeedIn = (
  plantsText: string | number,
  formatLength: string | number,
  rowsText: string | number,
) => `${plantsText} plants need ${formatLength} in ${rowsText} `;
export const row = "row";
export const rows2 = "rows";
export const areFreeHere = (formatLength: string | number) => `; ${formatLength} are free here.`;
export const plantTheThatFit = (fits: string | number) => `Plant the ${fits} that fit`;
export const variety = "Variety";
export const planting = "Planting ";
export const purpose = "Purpose";
export const place = "Place";
export const bloom = "Bloom";
export const isolation = "Isolation";
export const records = "Records";
export const lot = "Lot";
export const whatTheyAre = "What they are";
export const flowering = "Flowering";
export const together = (nameText: string | number) => `${nameText} together`;
export const beds = (count: string | number) => `${count} beds`;
export const differs = "differs";
export const plantsInEach = "Plants in each";
export const start = "Start";
export const fromNearEnd = "From near end";
export const lengthAlongBed = "Length along bed";
export const bedLongFreeBeside = (formatLength: string | number, free: string | number) =>
  `The bed is ${formatLength} long. Free beside this planting: ${free}.`;
export const slideAlongItsBed = (codeText: string | number) => `Slide ${codeText} along its bed`;
export const slideTo = "Slide to";
export const name = "Name";
export const whatItIs = "What it is";
export const groundFallsWayArrow =
  "The ground falls the way its arrow points: along its length. Turn it to point downhill.";
export const canopyAcross = "Canopy, across";
export const aSinglePlace = "a single place";
export const unknown = "unknown";
export const bloomDates = "Bloom dates";
export const sameEveryYearNot =
  "The same every year, and not to be asked again for the next season";
