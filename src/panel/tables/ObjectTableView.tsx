import { type ReactNode, useId, useMemo, useRef, useState } from "react";
import { useWindowStore } from "../../store/window/window-store.ts";
import { ActionsButton } from "../commands/ActionsButton.tsx";
import {
  type ObjectTable,
  type Sorting,
  type TableRow,
  foundRows,
  sortedRows,
} from "./table-rows.ts";
import { findRows } from "./table-words.ts";
import { windowNow } from "../state/plan-actions.ts";
import * as texts from "./words.ts";

export interface RowAction {
  /** Read out with the object's name behind it. */
  readonly label: string;
  /** Shown; the label when absent. */
  readonly short?: string;
  readonly run: (id: string, name: string) => void;
}

interface ObjectTableViewProps {
  readonly table: ObjectTable;
  readonly actions: readonly RowAction[];
  /** What was asked for: rows without it are left out. */
  readonly query: string;
  /** A cell that can be typed into; undefined: its text stands there. */
  readonly editCell?: ((id: string, column: number) => ReactNode) | undefined;
  readonly children?: ReactNode;
}

/** One table: sorted by any column, rows picked by their box, edited in the particulars. */
export function ObjectTableView(props: ObjectTableViewProps) {
  const { table, actions, query, editCell, children } = props;
  const headingId = useId();
  const headingRef = useRef<HTMLHeadingElement>(null);
  const selection = useWindowStore((state) => state.selection);
  const [sorting, setSorting] = useState<Sorting | null>(null);
  const rows = useMemo(
    () => sortedRows(foundRows(table.rows, query), sorting),
    [table.rows, query, sorting],
  );
  const selected = new Set(selection);
  const sortBy = (column: number) =>
    setSorting({
      column,
      isDescending: sorting?.column === column && !sorting.isDescending,
    });
  return (
    <section className="object-table" aria-labelledby={headingId}>
      <div className="region-head">
        <h2 id={headingId} ref={headingRef} tabIndex={-1}>
          {table.caption}
        </h2>
        <p className="region-note">{findRows.of(rows.length, table.rows.length)}</p>
        {children}
      </div>
      {rows.length === 0 ? (
        <p className="region-empty">{table.rows.length === 0 ? texts.none : findRows.none}</p>
      ) : (
        <div className="table-scroll">
          <table>
            <HeadRow columns={table.columns} sorting={sorting} onSort={sortBy} />
            <tbody>
              {rows.map((row) => (
                <BodyRow
                  key={row.id}
                  row={row}
                  isSelected={selected.has(row.id)}
                  actions={actions}
                  editCell={editCell}
                  onAction={() => headingRef.current?.focus()}
                />
              ))}
            </tbody>
          </table>
        </div>
      )}
    </section>
  );
}

interface HeadRowProps {
  readonly columns: readonly string[];
  readonly sorting: Sorting | null;
  readonly onSort: (column: number) => void;
}

function HeadRow({ columns, sorting, onSort }: HeadRowProps) {
  const orderOf = (column: number) => {
    if (sorting?.column !== column) return undefined;
    return sorting.isDescending ? ("descending" as const) : ("ascending" as const);
  };
  return (
    <thead>
      <tr>
        {columns.map((column, index) => (
          <th key={column} scope="col" aria-sort={orderOf(index)}>
            <button type="button" className="sort" onClick={() => onSort(index)}>
              {column}
              <span aria-hidden="true">{sortSign(orderOf(index))}</span>
            </button>
          </th>
        ))}
        <th scope="col">{texts.actions}</th>
      </tr>
    </thead>
  );
}

function sortSign(order: "ascending" | "descending" | undefined): string {
  if (order === undefined) return "";
  return order === "ascending" ? " ↑" : " ↓";
}

interface BodyRowProps {
  readonly row: TableRow;
  readonly isSelected: boolean;
  readonly actions: readonly RowAction[];
  readonly editCell: ObjectTableViewProps["editCell"];
  /** After an action that may have taken the row away. */
  readonly onAction: () => void;
}

function BodyRow({ row, isSelected, actions, editCell, onAction }: BodyRowProps) {
  const [name = "", ...cells] = row.cells;
  const toggle = () => {
    const { selection } = windowNow();
    windowNow().select(
      isSelected ? selection.filter((id) => id !== row.id) : [...selection, row.id],
    );
  };
  return (
    <tr
      className={isSelected ? "selected" : undefined}
      onContextMenu={(event) => {
        event.preventDefault();
        windowNow().select([row.id]);
        windowNow().askObjectMenu({ ids: [row.id], xPx: event.clientX, yPx: event.clientY });
      }}
    >
      <th scope="row">
        <label className="check-field">
          <input type="checkbox" checked={isSelected} onChange={toggle} />
          {name}
        </label>
      </th>
      {cells.map((cell, index) => (
        <td key={index}>{editCell?.(row.id, index + 1) ?? cell}</td>
      ))}
      <td className="row-actions">
        <ActionsButton ids={[row.id]} names={name} isLink />
        {actions.map((action) => (
          <button
            key={action.label}
            type="button"
            className="act"
            aria-label={`${action.label} ${name}`}
            onClick={() => {
              onAction();
              action.run(row.id, name);
            }}
          >
            {action.short ?? action.label}
          </button>
        ))}
      </td>
    </tr>
  );
}
