/** Words of the parts of layouts that are fetched when they are opened. */

export const takePlantingsAnotherLayout = "Take plantings to another layout";
export const selectPlantingsSheetTables = "Select plantings on the sheet or in the tables first.";
export const standsThereAlreadyUnder = (codes: string | number, nameText: string | number) =>
  `${codes} of ${nameText}. What stands there already under the same name is moved to where it stands here.`;
export const to = "To";
export const here = "Here";
export const copy = "Copy";
export const move = "Move";
export const doUseTheseBedsOther = "Use these beds in other layouts";
export const bedsChangedLayoutSheet = (count: string | number, name: string | number) =>
  `Beds are changed in the layout on the sheet only. Here the layouts you tick get the ${count} beds of ${name} instead of their own; their plantings stay on their ground.`;
export const doUseTheseBeds = "Use these beds";
export const renameLayout = "Rename layout";
export const name = "Name";
export const apply = "Apply";
