import { useState } from "react";
import type { ImportedTrace } from "../../core/outlines/import-outlines.ts";
import { type TraceChoice, type TraceRole, rolesFor } from "../../core/outlines/place-trace.ts";
import type { Trace, TraceSort } from "../../core/outlines/trace.ts";
import { CheckField } from "../form/ChoiceField.tsx";
import { OutlineImportRow } from "./OutlineImportRow.tsx";
import { roleWords, sortWords } from "./outline-words.ts";
import * as texts from "./words.ts";

/** Rows shown at first: a file of waypoints can be long. */
const FIRST_ROWS = 100;

interface OutlineImportTableProps {
  readonly traces: readonly Trace[];
  readonly imported: readonly ImportedTrace[];
  readonly choiceOf: (trace: Trace) => TraceChoice;
  readonly onChoose: (traces: readonly Trace[], choice: Partial<TraceChoice>) => void;
}

/** Everything the file holds, with what becomes of each, or of all of a sort at once. */
export function OutlineImportTable(props: OutlineImportTableProps) {
  const { traces, imported, choiceOf, onChoose } = props;
  const [isAll, setAll] = useState(false);
  const placed = new Map(imported.map((each) => [each.trace.number, each.placed]));
  const sorts = (["area", "line", "point"] as const).filter(
    (sort) => traces.filter((trace) => trace.sort === sort).length > 1,
  );
  return (
    <>
      {sorts.map((sort) => (
        <AllOfSort
          key={sort}
          sort={sort}
          onPick={(role) =>
            onChoose(
              traces.filter((trace) => trace.sort === sort),
              { role },
            )
          }
        />
      ))}
      {traces.length > FIRST_ROWS && (
        <CheckField label={texts.showAll(traces.length)} isOn={isAll} onSet={setAll} />
      )}
      <div className="csv-table" role="region" tabIndex={0} aria-label={texts.whatTheFileHolds}>
        <table>
          <thead>
            <tr>
              <th scope="col">{texts.number}</th>
              <th scope="col">{texts.name}</th>
              <th scope="col">{texts.inTheFile}</th>
              <th scope="col">{texts.becomes}</th>
            </tr>
          </thead>
          <tbody>
            {traces.slice(0, isAll ? traces.length : FIRST_ROWS).map((trace) => (
              <OutlineImportRow
                key={trace.number}
                trace={trace}
                choice={choiceOf(trace)}
                placed={placed.get(trace.number) ?? null}
                onChoose={(choice) => onChoose([trace], choice)}
              />
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}

interface AllOfSortProps {
  readonly sort: TraceSort;
  readonly onPick: (role: TraceRole) => void;
}

/** A list whose first entry stands for "as chosen one by one": picking sets them all. */
function AllOfSort({ sort, onPick }: AllOfSortProps) {
  return (
    <p>
      <label>
        {texts.allBecome(sortWords[sort])}
        <select
          value=""
          onChange={(event) => {
            const role = rolesFor(sort).find((each) => each === event.target.value);
            if (role) onPick(role);
          }}
        >
          <option value="">{texts.whatIsChosenBelow}</option>
          {rolesFor(sort).map((role) => (
            <option key={role} value={role}>
              {roleWords[role]}
            </option>
          ))}
        </select>
      </label>
    </p>
  );
}
