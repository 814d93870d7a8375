/** Words of beds on the screen. */

export const copyRowsColumns = "Copy in rows and columns";
export const directionsThoseFirstThem = (names: string | number) =>
  `${names}: directions are those of the first of them, across and along its length.`;
export const addsObject = "Adds 1 object.";
export const addsObjects = (added: string | number) => `Adds ${added} objects.`;
export const addTheCopies = "Add the copies";
export const across = "Across";
export const along = "Along";
export const gapAcross = "Gap across";
export const gapAlong = "Gap along";
export const leftInsteadRight = "To the left instead of the right";
export const towardsNearEndInstead = "Towards the near end instead of away";
export const cutBedInTwo = (codeText: string | number) => `Cut bed ${codeText} in two`;
export const lengthNearPart = "Length of the near part";
export const theBedIsLong = (formatLength: string | number) => `The bed is ${formatLength} long.`;
export const pathBetween = "Path between";
export const takenFarPart = "Taken from the far part.";
export const cutTheBed = "Cut the bed";
export const lineUpAndSpace = "Line up and space";
export const lineUpAlong = "Line up along";
export const firstStaysWhereSheet =
  "The first stays where it is; by the sheet, the outermost sides count.";
export const lineUp = "Line up";
export const gap = "Gap";
export const equal = "equal";
export const edgeEdgeLeftEmpty =
  "From edge to edge. Left empty, the outermost two stay and the gaps between become equal.";
export const space = "Space";
export const spaceAcross = "Space across";
export const spaceAlong = "Space along";
export const numberTheBeds = "Number the beds";
export const whichBeds = "Which beds";
export const applyTheNewCodes = "Apply the new codes";
export const firstBed = "First bed";
export const seenAlongBedsNear =
  "As seen along the beds; near is the foot of the sheet where beds are not turned.";
export const order = "Order";
export const codes = "Codes";
export const letters = "Letters";
export const firstNumber = "First number";
export const takenSomethingKeepsCode = (join: string | number) =>
  `${join} is taken by something that keeps its code: choose other letters or another number.`;
export const allBedsTheseCodes = "All beds have these codes already.";
export const bedsGetAnotherCode = (
  changedBeds: string | number,
  count: string | number,
  followed: string | number,
) => `${changedBeds} of ${count} beds and ${followed} get another code.`;
export const stakesPacketsMapsAlready =
  "! Stakes, packets and maps already written carry the old codes. Codes of plantings written by hand stay.";
export const oldAndNewCodes = "Old and new codes";
export const rename = (old: string | number) => `Rename ${old}`;
export const name = "Name";
export const code = "Code";
export const standsStake = "What stands on the stake.";
export const apply = "Apply";
export const shareBedAmongVarieties = (codeText: string | number) =>
  `Share bed ${codeText} among varieties`;
export const shares = "Shares";
export const gapBetweenTwo = "Gap between two";
export const addThePlantings = "Add the plantings";
export const seedListEmptyAdd = "The seed list is empty: add varieties to it first.";
export const varietiesOrderNearEnd = "Varieties, in the order from the near end";
export const ofPlantsPlaced = (placedOf: string | number, wantedPlants: string | number) =>
  ` · ${placedOf} of ${wantedPlants} plants placed`;
export const variety = "Variety";
export const from = "From";
export const to = "To";
export const plants = "Plants";
export const ofWanted = (wanted: string | number) => ` of ${wanted} wanted`;
