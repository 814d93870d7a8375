/** Words of the plan as grown in the window. */
import { type DayNumber, shortDate } from "../../core/model/day.ts";
import type { FieldRemedy } from "../../core/record/field-remedies.ts";
import { countBySeverity } from "../../core/checks/finding.ts";
import { formOf } from "../../core/words/plurals.ts";

export const grownWords = {
  planned: "As planned",
  grown: "As grown",
  legend: "The plan is read",
  day: "On",
  dayNeeded: "Type the day it is looked at",
  changed: "What the field changed",
  nothing: "The field has changed no finding of the plan.",
  since: (day: string) => `New since ${day}`,
  isNew: "New",
  learn: "Predicted and seen",
  wayOut: "What can still be done",
  settled: "Settled",
  covers: "Covers that do not count",
  doubts: (count: number) =>
    formOf(count, { one: "1 entry in doubt", other: `${count} entries in doubt` }),
  moved:
    "Moving a place here changes the plan and is judged with the record; it moves no plant in the ground.",
  stillTitle: (on: DayNumber | undefined) =>
    on === undefined ? "What can still be done" : `What can still be done on ${shortDate(on)}`,
  none: "Nothing that can still be done that day clears it: no cover counts once flowers may have opened, and what has flowered cannot be cut before bloom.",
  gone: "This finding is no longer there.",
  write: "Add as done",
  doIt: "Apply",
  close: "Close",
} as const;

/** `clears 2, brings 1 caution`. */
export function fieldEffect({ clears, brings }: FieldRemedy): string {
  const { caution, unknown } = countBySeverity(brings);
  const parts = [
    `clears ${clears.length}`,
    ...(caution > 0
      ? [`brings ${caution} ${formOf(caution, { one: "caution", other: "cautions" })}`]
      : []),
    ...(unknown > 0 ? [`brings ${unknown} unknown`] : []),
  ];
  return parts.join(", ");
}
