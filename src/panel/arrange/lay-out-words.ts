/** What the dialog that lays out the seed list says beside the words about layouts. */
import { formOf } from "../../core/words/plurals.ts";

export const COULD_NOT_START = "Laying out could not be started.";
export const LAY_OUT_TITLE = "Lay out the seed list";
export const LAYING_OUT = "Laying out three ways ...";
export const PROGRESS_LABEL = "Share that is done";
export const CANCEL = "Cancel";
export const addAll = (count: number) => (count === 2 ? "Add both" : "Add all three");
export const ADD_AND_COMPARE = "Add and compare";
export const ADD_ONE = "Add";
export const NOT_LAID = "Not laid out";
export const STAYS =
  "What stands stays where it is. Each comes as a layout of its own, judged as everything on the sheet is, and one undo takes them away.";

/** Heard once they are added. */
export function addedText(names: readonly string[], conflicts: number): string {
  const left =
    conflicts === 0
      ? "no conflict found"
      : formOf(conflicts, { one: "1 conflict", other: `${conflicts} conflicts` });
  return `${names[0] ?? ""} is on the sheet: ${left}.`;
}
