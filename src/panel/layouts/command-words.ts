/** Commands of layouts: their names, further words they are found by, and why they cannot be used. */

export const copyLayout = "Copy this layout";
export const copyLayoutAlso = "alternative";
export const renameLayout = "Rename this layout ...";
export const takePlantings = "Take plantings to another layout ...";
export const lendBeds = "Use these beds in other layouts ...";
export const chooseLayout = "Mark this layout as chosen, or not";
export const deleteLayout = "Delete this layout";
export const deleteLayoutAlso = "remove";
export const onlyOneLayout = "There is only one layout";

/** Titles of steps. */
export const choose = (layout: string) => `Choose ${layout}`;
export const unchoose = (layout: string) => `No longer choose ${layout}`;
