import { removeObjects } from "../../core/edits/object-edits.ts";
import { objectNames } from "../../core/model/object-names.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { planNow } from "../state/plan-actions.ts";
import * as words from "./command-words.ts";

/**
 * Takes objects of the layout on screen away, as one step.
 * @param titleOf title of the step for the names of the objects: `Delete 3 beds`, `Cut B02-1`
 */
export function removeNow(
  ids: readonly string[],
  titleOf: (names: string) => string = words.deleteObjects,
): void {
  const { plan, layoutId, commit } = planNow();
  const names = objectNames(plan, layoutOf(plan, layoutId), ids);
  commit(removeObjects(layoutId, ids, titleOf(names)));
}
