import { useDeferredValue, useMemo, useState } from "react";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { ObjectTableView, type RowAction } from "./ObjectTableView.tsx";
import { PlantsCell, StartCell } from "./EditCells.tsx";
import {
  type ObjectTable,
  bedTable,
  foundRows,
  plantingColumn,
  plantingTable,
  surroundingTable,
} from "./table-rows.ts";
import { findRows } from "./table-words.ts";
import { usePruned } from "../state/use-pruned.ts";
import { windowNow } from "../state/plan-actions.ts";
import { useShownLayout, useShownPlan, useShownResult } from "../state/use-shown-plan.ts";
import { newBed, newGround, numberBeds } from "../beds/commands.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { placeDialog } from "../seed-list/commands.ts";
import * as texts from "./words.ts";
import "./tables.css";

const NONE: readonly RowAction[] = [];

/** What the words asked for hide is no longer selected. */
function useTablesPruned(asked: string, tables: readonly ObjectTable[]): void {
  const shown = useMemo(
    () => new Set(tables.flatMap(({ rows }) => foundRows(rows, asked).map(({ id }) => id))),
    [tables, asked],
  );
  usePruned(asked, shown, keepSelected);
}

function keepSelected(shown: ReadonlySet<string>): void {
  const { selection, select } = windowNow();
  const kept = selection.filter((id) => shown.has(id));
  if (kept.length < selection.length) select(kept);
}

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
  const [query, setQuery] = useState("");
  const asked = useDeferredValue(query);
  const tables = useMemo(() => [beds, plantings, surroundings], [beds, plantings, surroundings]);
  useTablesPruned(asked, tables);
  const byId = useMemo(
    () => new Map(layout.plantings.map((planting) => [planting.id, planting])),
    [layout],
  );
  const editCell = (id: string, column: number) => {
    const planting = byId.get(id);
    if (!planting) return undefined;
    if (column === plantingColumn("plants")) return <PlantsCell planting={planting} />;
    return column === plantingColumn("start") ? <StartCell planting={planting} /> : undefined;
  };
  const place: RowAction = {
    label: texts.placeVarietyIn,
    short: texts.placeShort,
    run: (id) => placeDialog.open({ varietyId: null, bedId: id }),
  };
  return (
    <div className="tables">
      <input
        type="search"
        className="table-find"
        aria-label={findRows.label}
        placeholder={findRows.placeholder}
        autoComplete="off"
        spellCheck={false}
        data-draft={query === "" ? "none" : "typed"}
        value={query}
        onChange={(event) => setQuery(event.target.value)}
      />
      <ObjectTableView table={plantings} query={asked} actions={NONE} editCell={editCell}>
        <button type="button" onClick={() => placeDialog.open({ varietyId: null, bedId: null })}>
          {texts.placeAVariety}
        </button>
      </ObjectTableView>
      <ObjectTableView table={beds} query={asked} actions={[place]}>
        {layout.beds.length > 1 && (
          <CommandButton of={numberBeds}>{texts.numberTheBeds}</CommandButton>
        )}
        <CommandButton of={newBed}>{texts.newBedSize}</CommandButton>
      </ObjectTableView>
      <ObjectTableView table={surroundings} query={asked} actions={NONE}>
        <CommandButton of={newGround}>{texts.addGround}</CommandButton>
      </ObjectTableView>
    </div>
  );
}
