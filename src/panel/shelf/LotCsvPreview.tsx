import type { ReactNode } from "react";
import type { LotList } from "../../core/exchange/read-lots-csv.ts";
import { amountWords } from "../../core/lots/lot-words.ts";

/** Rows listed at most; a list of thousands is not read through. */
const MOST_SHOWN = 200;

/** `1 lot`, `12 lots`. */
export function lotsWords(count: number): string {
  return count === 1 ? "1 lot" : `${count} lots`;
}

/** Row by row which lots would be taken, and which not and why. */
export function LotCsvPreview({ list }: { readonly list: LotList }) {
  const { newPlaces, unknownColumns } = list;
  return (
    <>
      <p role="status">
        <b>{summary(list)}</b>
        {newPlaces.length > 0 &&
          ` New storage places: ${newPlaces.map(({ name }) => name).join(", ")}.`}
        {unknownColumns.length > 0 && ` Columns not known here: ${unknownColumns.join(", ")}.`}
      </p>
      <RefusedRows list={list} />
      <TakenRows list={list} />
    </>
  );
}

function summary({ accepted, rejected }: LotList): string {
  if (accepted.length + rejected.length === 0) return "No rows.";
  const counted = (change: string, words: string) => {
    const count = accepted.filter((row) => row.change === change).length;
    return count === 0 ? [] : [`${count} ${words}`];
  };
  const parts = [
    ...counted("new", "new"),
    ...counted("changed", "changed"),
    ...counted("same", "as they are"),
  ];
  const used = parts.length === 0 ? "Nothing to take" : parts.join(", ");
  if (rejected.length === 0) return `${used}; every row can be used.`;
  const faulty = rejected.length === 1 ? "1 row" : `${rejected.length} rows`;
  return `${used}; ${faulty} cannot be used.`;
}

function RefusedRows({ list: { rejected } }: { readonly list: LotList }) {
  const faults = rejected.flatMap(({ row, name, problems }) =>
    problems.map((problem) => ({ row, name, ...problem })),
  );
  if (faults.length === 0) return null;
  return (
    <RowTable
      caption="Rows that cannot be used"
      heads={["Row", "Code", "Column", "Why"]}
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
    </RowTable>
  );
}

function TakenRows({ list: { accepted } }: { readonly list: LotList }) {
  if (accepted.length === 0) return null;
  const words = { new: "new", changed: "changed", same: "as it is" } as const;
  return (
    <RowTable
      caption="Rows that can be used"
      heads={["Row", "Code", "Amount", "What it does"]}
      more={accepted.length - MOST_SHOWN}
    >
      {accepted.slice(0, MOST_SHOWN).map(({ row, lot, change }) => (
        <tr key={row}>
          <th scope="row">
            <span aria-hidden="true">✓</span> {row}
          </th>
          <td>
            <bdi>{lot.code}</bdi>
          </td>
          <td>{amountWords(lot.amount)}</td>
          <td>{words[change]}</td>
        </tr>
      ))}
    </RowTable>
  );
}

interface RowTableProps {
  readonly caption: string;
  readonly heads: readonly string[];
  /** Rows beyond those shown; 0 or less: none. */
  readonly more: number;
  readonly children: ReactNode;
}

function RowTable({ caption, heads, more, children }: RowTableProps) {
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
