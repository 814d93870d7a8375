/**
 * Where words still stand outside words files. The lists only get shorter: the house rule
 * (tests/architecture/words.test.ts) holds the first, and the test in a made-up language lets texts
 * of both be plain English.
 */

/** Components with texts in their JSX, under src. */
export const COMPONENTS_NOT_DONE: readonly string[] = [
  "app/App.tsx",
  "app/MainView.tsx",
  "panel/beds/BedRowsDialog.tsx",
  "panel/beds/GroundDialog.tsx",
  "panel/beds/NewBedDialog.tsx",
  "panel/form/ChoiceField.tsx",
  "panel/form/DayField.tsx",
  "panel/form/Dialog.tsx",
  "panel/form/RangeField.tsx",
  "panel/form/RectangleFields.tsx",
  "panel/form/WindowField.tsx",
  "panel/particulars/SelectedParticulars.tsx",
  "panel/window/Dialogs.tsx",
  "panel/window/Header.tsx",
  "panel/window/PlanMenu.tsx",
  "panel/window/ToolBar.tsx",
];

/**
 * Parts of src whose modules that are no components hold texts: findings and ways out, titles of
 * steps, commands, what tools say.
 */
export const MODULES_NOT_DONE: readonly string[] = ["core", "store", "canvas", "panel"];

/** Parts of src where plural forms are still chosen by `=== 1`. */
export const PLURALS_NOT_DONE: readonly string[] = ["canvas/", "panel/"];
