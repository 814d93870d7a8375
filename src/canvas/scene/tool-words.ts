/** What the tools of the sheet say, and titles of the steps they make. */

export const bedNamed = (code: string) => `bed ${code}`;
export const toolNotLoaded = "This tool could not be loaded. Is the network there?";
export const cancel = "Cancel";
export const close = "Close";

/** Drawing a bed. */
export const firstCornerSet = "First corner set. Click the opposite one, or type the size.";
export const typeSize = "Type width and length";
export const tooSmallForBed = "Too small for a bed: nothing drawn.";
export const width = "Width";
export const length = "Length";
export const sidesCross = "sides cross";

/** Measuring. */
export const measuringFrom = (end: string) => `Measuring from ${end}: click the other end.`;
export const measuringFromHere = "Measuring from this place: click the other end.";
export const edgeToEdge = (distance: string) => `${distance} edge to edge`;
export const acrossAndUp = (across: string, up: string) => `${across} across, ${up} up`;
export const centreToCentre = (distance: string) => `${distance} centre to centre`;

/** A length marked on the picture. */
export const oneEndMarked = "One end marked. Click the other end.";
export const endsOnOneSpot = "Both ends lie on one spot: mark them apart.";
export const bothEndsMarked = "Both ends marked. Type how long it is in the picture's panel.";
export const movePicture = "Move the picture";

/** Moving, turning, shaping. */
export const move = (names: string) => `Move ${names}`;
export const moving = (names: string) => `Moving ${names}: click where the middle goes.`;
export const selectionLocked = "What is selected is locked and stays as it is.";
export const turning = (name: string) => `Turning ${name}: click where the handle goes.`;
export const shaping = (name: string) => `Shaping ${name}: click where the handle goes.`;
export const resize = (names: string) => `Resize ${names}`;
export const turn = (names: string) => `Turn ${names}`;
export const moveCorner = (names: string) => `Move a corner of ${names}`;
export const addCorner = (names: string) => `Add a corner to ${names}`;
export const wouldCrossItself = "would cross itself";
export const cornerWouldGive = (problem: string) => `That corner would give ${problem}.`;
export const turnOfBed = (code: string) => `bed ${code}`;
export const turnOfSheet = "the sheet";

/** Selecting. */
export const isLocked = (name: string) => `${name} is locked. Click its lock to select it.`;
export const takenFromSelection = (name: string) => `${name} taken from the selection.`;
export const addedToSelection = (name: string) => `${name} added to the selection.`;
export const selectedInside = (count: number) => `${count} selected: what lies wholly inside.`;
export const movedBy = (distance: string) => `moved ${distance}`;
export const turnedTo = (degrees: number) => `turn ${degrees}°`;
export const turnedAs = (degrees: number, like: string) => `turn ${degrees}°, as ${like}`;
