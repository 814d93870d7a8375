/** Words of clipboard on the screen. */

export const pasteFromAText = "Paste from a text";
export const bedsPlantingsSurroundingsCopied =
  "Beds, plantings and surroundings copied in a plan are text. Paste that text here, with Ctrl or Cmd + V or by pressing and holding.";
export const copiedText = "Copied text";
export const pasteIntoThisLayout = "Paste into this layout";
export const copyThisText = "Copy this text";
export const browserDoesNotLet =
  "The browser does not let the program write to the clipboard. Copy this text by hand, then use Paste from a text.";
export const textToCopy = "Text to copy";
export const twoKindsOneName = "Two kinds of one name";
export const copiedKindPlanKnows =
  "What was copied is of a kind that this plan knows with other figures.";
export const doUseThisPlansFigures = "Use this plan’s figures";
export const doUseCopiedFiguresAll = (names: string | number) =>
  `Use the copied figures for all ${names} of this plan`;
export const addCopiedKindsBeside = "Add the copied kinds beside them";
export const cancel = "Cancel";
