/** What the panel that clears a whole layout says beside the words about its answer. */
import { formOf } from "../../core/words/plurals.ts";

export const HEADING = "Clear everything";
export const CLOSE = "Close";
export const CANCEL = "Cancel";
export const TRY = "Try";
export const APPLY = "Apply";
export const APPLY_ALL = "Apply all";
export const APPLIED = "Applied";
export const LOOKING = "Looking for the fewest and mildest changes ...";
export const COULD_NOT_START = "Clearing could not be started.";
export const ALLOWED = "What is allowed";
export const MOST_CAGES = "New cages at most";
export const ANY_NUMBER = "Empty: as many as it takes";
export const MOST_DAYS = "Days a start may move";
export const STAY = "These stay as they are";
export const MAY_WAIT = "These may wait a year or give no seed";
export const LOOK_AGAIN = "Look again";
export const LEFT = "What is left";
export const BRINGS = "What comes with it";
export const CHANGES = "Changes, in this order";
export const WHAT_IT_TAKES = "What it takes";
export const UNDO_TITLE = "Clear everything";

export function lookingText(left: number): string {
  return formOf(left, {
    one: "1 conflict left in the best so far.",
    other: `${left} conflicts left in the best so far.`,
  });
}

export function clearsText(count: number): string {
  return formOf(count, { one: "clears 1", other: `clears ${count}` });
}
