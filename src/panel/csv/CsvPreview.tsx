import type { ReactNode } from "react";
import type { RejectedRow } from "../../core/exchange/csv-list.ts";
import { type UsableRow, csvSummary } from "./csv-words.ts";
import * as texts from "./words.ts";
import { Sentence } from "../state/Sentence.tsx";

/** Rows listed at most; a list of thousands is not read through. */
const MOST_SHOWN = 200;

interface CsvPreviewProps<Row extends UsableRow & { readonly row: number }> {
  readonly list: {
    readonly accepted: readonly Row[];
    readonly rejected: readonly RejectedRow[];
    readonly unknownColumns: readonly string[];
  };
  /** What else the list would bring, said after the counts. */
  readonly more?: string;
  /** Heading of what a row is told by. */
  readonly nameHead: string;
  /** Headings of what is said of a row that can be used, and what is said. */
  readonly heads: readonly string[];
  readonly cellsOf: (row: Row) => readonly ReactNode[];
}

/** Row by row what would be taken, and what not and why. */
export function CsvPreview<Row extends UsableRow & { readonly row: number }>({
  list,
  more = "",
  nameHead,
  heads,
  cellsOf,
}: CsvPreviewProps<Row>) {
  const { accepted, rejected, unknownColumns } = list;
  return (
    <>
      <p role="status">
        <b>{csvSummary(list)}</b>
        {more}
        {unknownColumns.length > 0 && ` ${texts.unknownColumns(unknownColumns)}`}
      </p>
      {rejected.length > 0 && <RejectedRows rows={rejected} nameHead={nameHead} />}
      {accepted.length > 0 && (
        <CsvTable
          caption={texts.usableRows}
          heads={[texts.row, ...heads]}
          more={accepted.length - MOST_SHOWN}
        >
          {accepted.slice(0, MOST_SHOWN).map((entry) => (
            <tr key={entry.row}>
              <th scope="row">
                <span aria-hidden="true">✓</span> {entry.row}
              </th>
              {cellsOf(entry).map((cell, index) => (
                <td key={heads[index]}>{cell}</td>
              ))}
            </tr>
          ))}
        </CsvTable>
      )}
    </>
  );
}

interface RejectedRowsProps {
  readonly rows: readonly RejectedRow[];
  readonly nameHead: string;
}

function RejectedRows({ rows, nameHead }: RejectedRowsProps) {
  const faults = rows.flatMap(({ row, name, problems }) =>
    problems.map((problem) => ({ row, name, ...problem })),
  );
  return (
    <CsvTable
      caption={texts.faultyRows}
      heads={[texts.row, nameHead, texts.column, texts.why]}
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
          <td>{column === "" ? texts.theWholeRow : column}</td>
          <td>
            <Sentence
              words={texts.gotExpected}
              parts={{ got: got === '""' ? texts.nothing : <bdi>{got}</bdi>, expected }}
            />
          </td>
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
      {more > 0 && <p>{texts.andMore(more)}</p>}
    </div>
  );
}
