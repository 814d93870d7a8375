/** Words of the parts of layouts that are fetched when they are opened. */
import { formOf } from "../../core/words/plurals.ts";

export const takePlantings = "Take plantings to another layout";
export const selectPlantings = "Select plantings on the sheet or in the tables first.";
export const plantingsOf = (codes: string, layout: string) =>
  `${codes} of ${layout}. What stands there already under the same name is moved to where it stands here.`;
export const to = "To";
export const here = "Here";
export const copy = "Copy";
export const move = "Move";
export const bedsElsewhere = "Use these beds in other layouts";
export const bedsElsewhereHint = (count: number, layout: string) =>
  formOf(count, {
    one: `Beds are changed in the layout on the sheet only. Here the layouts you tick get the ${count} bed of ${layout} instead of their own; their plantings stay on their ground.`,
    other: `Beds are changed in the layout on the sheet only. Here the layouts you tick get the ${count} beds of ${layout} instead of their own; their plantings stay on their ground.`,
  });
export const sameBeds = "Use these beds";
export const renameLayout = "Rename layout";
export const name = "Name";
export const apply = "Apply";
export const copyTo = (codes: string, layout: string) => `Copy ${codes} to ${layout}`;
export const moveTo = (codes: string, layout: string) => `Move ${codes} to ${layout}`;
export const leaveThem = "leave them";
export const takeThemOut = "take them out";
export const sameBedsIn = (layouts: string) => `Same beds in ${layouts}`;
export const layoutNeedsName = "A layout needs a name";
export const nameTaken = (layout: string) => `Another layout is called ${layout}`;
