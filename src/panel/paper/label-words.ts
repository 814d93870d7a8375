/** Words of the fields about labels. */
import type { LabelFold } from "../../core/labels/label-sizes.ts";

export const labelWords = {
  sheet: "Labels",
  measured: "a bought sheet, measured",
  sheetHint: "Our own sizes, to cut. Measure bought sheets; print one on plain paper first.",
  measures: "Measures of the sheet, mm",
  missing: "Type a number of millimetres",
  fold: "Labels are",
  start: "First label to print on",
  startProblem: "A whole number from 1",
  right: "Printer is off to the right, mm",
  down: "Printer is off down the page, mm",
  offsetHint: "Measured on a print; less than 0 is left or up. Remembered on this device.",
  treated: "Seed treated with",
  code: "With a code read by machine (QR)",
  picture: (columns: number, rows: number, startAt: number) =>
    `A sheet of ${columns} x ${rows} labels${startAt > 1 ? `, the first ${startAt - 1} used` : ""}`,
} as const;

export const foldWords: Readonly<Record<LabelFold, string>> = {
  flat: "flat",
  over: "folded over the upper edge, words on both sides",
  round: "wrapped round a stake, words on both ends",
};
