/** Words of layouts on the screen. */

export const layouts = "Layouts";
export const chosen = " (chosen)";
export const layout = "Layout";
export const copy = (name: string | number) => `Copy ${name}`;
export const rename = (name: string | number) => `Rename ${name}`;
export const arrangeForMe = (name: string | number) => `Arrange ${name} for me`;
export const takeSelectedPlantingsAnother = "Take selected plantings to another layout";
export const bedsElsewhere = "Use these beds in other layouts";
export const noLongerChoose = (name: string | number) => `No longer choose ${name}`;
export const markAsChosen = (name: string | number) => `Mark ${name} as chosen`;
export const deleteWord = (name: string | number) => `Delete ${name}`;
