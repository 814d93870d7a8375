/** Words of copying and pasting. */
import { type Noun, counted } from "../../core/words/plurals.ts";

const objectNoun: Noun = { one: "object", other: "objects" };

export const pasteFromAText = "Paste from a text";
export const pasteHint =
  "Beds, plantings and surroundings copied in a plan are text. Paste that text here, with Ctrl or Cmd + V or by pressing and holding.";
export const copiedText = "Copied text";
export const pasteIntoThisLayout = "Paste into this layout";
export const copyThisText = "Copy this text";
export const clipboardWriteRefused =
  "The browser does not let the program write to the clipboard. Copy this text by hand, then use Paste from a text.";
export const textToCopy = "Text to copy";
export const twoKindsOneName = "Two kinds of one name";
export const otherFigures = "What was copied is of a kind that this plan knows with other figures.";
export const figuresOfPlan = "Use this plan’s figures";
export const figuresCopied = (names: string) =>
  `Use the copied figures for all ${names} of this plan`;
export const addCopiedKindsBeside = "Add the copied kinds beside them";
export const cancel = "Cancel";

export const cutObjects = (names: string) => `Cut ${names}`;
export const copiedObjects = (names: string) => `Copied ${names}.`;
export const nothingPasted = (reason: string) => `Nothing pasted. ${reason}`;
export const clipboardRefused = "The browser does not let the program read the clipboard.";
export const pasteObjects = (count: number) => `Paste ${counted(count, objectNoun)}`;
export const clashWithPlan = (kind: string, copied: string, here: string) =>
  `${kind}: copied with ${copied}; in this plan ${here}.`;
export const clashWithBase = (kind: string, copied: string) =>
  `${kind}: copied with ${copied} of the grower's own; in this plan with the built-in figures.`;
export const distanceFor = (distance: string, level: string) => `${distance} for ${level}`;
export const noDistance = "no isolation distance";
