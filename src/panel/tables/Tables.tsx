import { useDeferredValue, useMemo } from "react";
import { removeObjects } from "../../core/edits/object-edits.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { ObjectTableView, type RowAction } from "./ObjectTableView.tsx";
import { commit, planNow } from "../state/plan-actions.ts";
import { bedTable, plantingTable, surroundingTable } from "./table-rows.ts";
import { useShownLayout, useShownPlan, useShownResult } from "../state/use-shown-plan.ts";
import { viewNow } from "../state/view-state.ts";
import "./tables.css";

/** Everything on the sheet as tables: the way for keyboard and screen reader. */
export function Tables() {
  const plan = useDeferredValue(useShownPlan());
  const layout = useDeferredValue(useShownLayout());
  const result = useDeferredValue(useShownResult());
  const book = usePlanStore((state) => state.book);
  const beds = useMemo(() => bedTable(plan, layout), [plan, layout]);
  const plantings = useMemo(() => plantingTable(plan, layout, result), [plan, layout, result]);
  const surroundings = useMemo(
    () => surroundingTable(plan, (id) => book.kind(id)?.name ?? id),
    [plan, book],
  );
  const remove: RowAction = {
    label: "Delete",
    run: (id, name) => {
      const { layoutId } = planNow();
      commit(removeObjects(layoutId, [id], `Delete ${name}`));
    },
  };
  const place: RowAction = {
    label: "Place a variety in",
    short: "Place",
    run: (id) => viewNow().ask({ kind: "place", varietyId: null, bedId: id }),
  };
  return (
    <div className="tables">
      <ObjectTableView table={beds} actions={[place, remove]}>
        {layout.beds.length > 1 && (
          <button type="button" onClick={() => viewNow().ask({ kind: "number-beds" })}>
            Number the beds
          </button>
        )}
        <button type="button" onClick={() => viewNow().ask({ kind: "new-bed" })}>
          New bed by its size
        </button>
      </ObjectTableView>
      <ObjectTableView table={plantings} actions={[remove]}>
        <button
          type="button"
          onClick={() => viewNow().ask({ kind: "place", varietyId: null, bedId: null })}
        >
          Place a variety
        </button>
      </ObjectTableView>
      <ObjectTableView table={surroundings} actions={[remove]}>
        <button type="button" onClick={() => viewNow().ask({ kind: "new-ground" })}>
          Add ground
        </button>
      </ObjectTableView>
    </div>
  );
}
