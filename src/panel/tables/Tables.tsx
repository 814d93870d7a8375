import { useDeferredValue, useMemo } from "react";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { ObjectTableView, type RowAction } from "./ObjectTableView.tsx";
import { bedTable, plantingTable, surroundingTable } from "./table-rows.ts";
import { useShownLayout, useShownPlan, useShownResult } from "../state/use-shown-plan.ts";
import { newBed, newGround, numberBeds } from "../beds/commands.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { removeNow } from "../commands/remove-objects.ts";
import { placeDialog } from "../seed-list/commands.ts";
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
    run: (id) => removeNow([id]),
  };
  const place: RowAction = {
    label: "Place a variety in",
    short: "Place",
    run: (id) => placeDialog.open({ varietyId: null, bedId: id }),
  };
  return (
    <div className="tables">
      <ObjectTableView table={beds} actions={[place, remove]}>
        {layout.beds.length > 1 && <CommandButton of={numberBeds}>Number the beds</CommandButton>}
        <CommandButton of={newBed}>New bed by its size</CommandButton>
      </ObjectTableView>
      <ObjectTableView table={plantings} actions={[remove]}>
        <button type="button" onClick={() => placeDialog.open({ varietyId: null, bedId: null })}>
          Place a variety
        </button>
      </ObjectTableView>
      <ObjectTableView table={surroundings} actions={[remove]}>
        <CommandButton of={newGround}>Add ground</CommandButton>
      </ObjectTableView>
    </div>
  );
}
