import type { ReactNode } from "react";
import type { RejectedRow, VarietyList } from "../../core/exchange/read-varieties-csv.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { csvSummary, rowEffect } from "./csv-words.ts";

/** Rows listed at most; a list of thousands is not read through. */
const MOST_SHOWN = 200;

/** Row by row what would be taken, and what not and why. */
export function CsvPreview({ list }: { readonly list: VarietyList }) {
  const { accepted, rejected, unknownColumns } = list;
  return (
    <>
      <p role="status">
        <b>{csvSummary(list)}</b>
        {unknownColumns.length > 0 && ` Columns not known here: ${unknownColumns.join(", ")}.`}
      </p>
      {rejected.length > 0 && <RejectedRows rows={rejected} />}
      {accepted.length > 0 && <AcceptedRows list={list} />}
    </>
  );
}

function RejectedRows({ rows }: { readonly rows: readonly RejectedRow[] }) {
  const faults = rows.flatMap(({ row, name, problems }) =>
    problems.map((problem) => ({ row, name, ...problem })),
  );
  return (
    <CsvTable
      caption="Rows that cannot be used"
      heads={["Row", "Name", "Column", "Why"]}
      more={faults.length - MOST_SHOWN}
    >
      {faults.slice(0, MOST_SHOWN).map(({ row, name, column, got, expected }) => (
        <tr key={`${row} ${column} ${expected}`} className="csv-rejected">
          <th scope="row">
            <span aria-hidden="true">✕</span> {row}
          </th>
          <td>
            <bdi>{name}</bdi>
          </td>
          <td>{column === "" ? "the whole row" : column}</td>
          <td>
            got {got === '""' ? "nothing" : <bdi>{got}</bdi>}, expected {expected}
          </td>
        </tr>
      ))}
    </CsvTable>
  );
}

function AcceptedRows({ list: { accepted } }: { readonly list: VarietyList }) {
  const book = usePlanStore((state) => state.book);
  return (
    <CsvTable
      caption="Rows that can be used"
      heads={["Row", "Name", "Kind", "What it does"]}
      more={accepted.length - MOST_SHOWN}
    >
      {accepted.slice(0, MOST_SHOWN).map((entry) => (
        <tr key={entry.row}>
          <th scope="row">
            <span aria-hidden="true">✓</span> {entry.row}
          </th>
          <td>
            <bdi>{entry.variety.name}</bdi>
          </td>
          <td>{book.kind(entry.variety.kind)?.name}</td>
          <td>{rowEffect(entry)}</td>
        </tr>
      ))}
    </CsvTable>
  );
}

interface CsvTableProps {
  readonly caption: string;
  readonly heads: readonly string[];
  /** Rows beyond those shown; 0 or less: none. */
  readonly more: number;
  readonly children: ReactNode;
}

function CsvTable({ caption, heads, more, children }: CsvTableProps) {
  return (
    <div className="csv-table" role="region" aria-label={caption} tabIndex={0}>
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>{children}</tbody>
      </table>
      {more > 0 && <p>and {more} more</p>}
    </div>
  );
}
