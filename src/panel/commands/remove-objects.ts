import { removeObjects } from "../../core/edits/object-edits.ts";
import { objectNames } from "../../core/model/object-names.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { planNow } from "../state/plan-actions.ts";

/** Takes objects of the layout on screen away, as one step: `Delete 3 beds`, `Cut B02-1`. */
export function removeNow(ids: readonly string[], verb: "Delete" | "Cut" = "Delete"): void {
  const { plan, layoutId, commit } = planNow();
  const names = objectNames(plan, layoutOf(plan, layoutId), ids);
  commit(removeObjects(layoutId, ids, `${verb} ${names}`));
}
