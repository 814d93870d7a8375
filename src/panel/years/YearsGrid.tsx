import { civilFromDay, monthName } from "../../core/model/day.ts";
import { setByHand } from "../../core/renewal/years-edits.ts";
import type { YearsCell } from "../../core/renewal/judge-years.ts";
import type { YearsLine, YearsPart, YearsTable } from "../../core/renewal/years-table.ts";
import type { YearsNames } from "../../core/renewal/fault-words.ts";
import {
  cellWords,
  groundWords,
  lifeWords,
  standingWords,
} from "../../core/renewal/years-words.ts";
import { commit } from "../state/plan-actions.ts";
import { cellLabel, yearsPageWords as words } from "./years-page-words.ts";

interface YearsGridProps {
  readonly table: YearsTable;
  readonly names: YearsNames;
  /** While a lay-out is worked out nothing is changed by hand. */
  readonly isLocked: boolean;
}

/** Varieties by crossing set, seasons across; each season of each can be pressed. */
export function YearsGrid({ table, names, isLocked }: YearsGridProps) {
  const { seasons } = names;
  return (
    <div className="table-scroll years-scroll" role="region" tabIndex={0} aria-label={words.table}>
      <table className="years-table">
        <thead>
          <tr>
            <th scope="col">{words.variety}</th>
            <th scope="col">{words.lasts}</th>
            {seasons.map((season) => (
              <th key={season} scope="col">
                {season}
              </th>
            ))}
          </tr>
        </thead>
        {table.parts.map((part) => (
          <GridPart
            key={part.lines[0]?.row.variety.id ?? part.name}
            part={part}
            names={names}
            isLocked={isLocked}
          />
        ))}
        <Totals table={table} names={names} />
      </table>
    </div>
  );
}

interface GridPartProps extends Omit<YearsGridProps, "table"> {
  readonly part: YearsPart;
}

function GridPart({ part, names, isLocked }: GridPartProps) {
  return (
    <tbody>
      <tr className="years-part">
        <th scope="rowgroup" colSpan={2 + names.seasons.length}>
          <span>{part.name}</span>
        </th>
      </tr>
      {part.lines.map((line) => (
        <GridLine key={line.row.variety.id} line={line} names={names} isLocked={isLocked} />
      ))}
    </tbody>
  );
}

interface GridLineProps extends Omit<YearsGridProps, "table"> {
  readonly line: YearsLine;
}

function GridLine({ line: { row, cells }, names, isLocked }: GridLineProps) {
  const { name } = row.variety;
  return (
    <tr>
      <th scope="row">
        <bdi>{name}</bdi> <span className="soft">{row.kind.name}</span>
      </th>
      <td className="years-lasts" title={lifeWords(row)}>
        {row.lot && <span className="code">{row.lot.code}</span>}{" "}
        <span className={row.standing === "keeps" ? "soft" : "caution-text"}>
          {row.standing === "keeps" ? endWords(row.end?.likely) : `! ${standingWords(row)}`}
        </span>
      </td>
      {cells.map((cell, season) => (
        <GridCell
          key={names.seasons[season] ?? season}
          cell={cell}
          label={cellLabel(name, names.seasons[season] ?? "", labelWords(cell))}
          isLocked={isLocked}
          onPress={() =>
            commit(
              setByHand(
                row,
                season,
                cell.grown !== "seed",
                words.undo.byHand(name, names.seasons[season] ?? ""),
              ),
            )
          }
        />
      ))}
    </tr>
  );
}

/** `to Oct 2030`. */
function endWords(day: number | null | undefined): string {
  if (day === undefined) return "";
  if (day === null) return words.long;
  const { year, month } = civilFromDay(day);
  return words.lastsTo(`${monthName(month)} ${year}`);
}

function labelWords(cell: YearsCell): string {
  return [cellWords(cell) || words.notGrown, cell.byHand ? words.byHand : "", endMark(cell)]
    .filter((each) => each !== "")
    .join(", ");
}

function endMark({ endsEarly, endsLikely }: YearsCell): string {
  return endsLikely ? words.ends : endsEarly ? words.mayEnd : "";
}

interface GridCellProps {
  readonly cell: YearsCell;
  readonly label: string;
  readonly isLocked: boolean;
  readonly onPress: () => void;
}

function GridCell({ cell, label, isLocked, onPress }: GridCellProps) {
  const shown = cellWords(cell);
  const mark = endMark(cell);
  return (
    <td
      className={[
        "years-cell",
        cell.grown ?? "",
        cell.endsLikely ? "ends-likely" : cell.endsEarly ? "ends-early" : "",
      ].join(" ")}
    >
      <button
        type="button"
        aria-label={label}
        aria-pressed={cell.grown === "seed"}
        disabled={isLocked}
        onClick={onPress}
      >
        <span className={cell.hasFault ? "conflict-text" : ""}>
          {cell.hasFault && "✕ "}
          {shown === "" ? "·" : shown}
        </span>
        {(cell.byHand || mark !== "") && (
          <span className="years-mark soft">
            {[cell.byHand ? words.byHand : "", mark].filter((each) => each !== "").join(", ")}
          </span>
        )}
      </button>
    </td>
  );
}

function Totals({ table: { judged }, names }: Pick<YearsGridProps, "table" | "names">) {
  const { units } = names;
  const rows: readonly (readonly [string, readonly string[]])[] = [
    [words.counts, judged.seasons.map(({ grown }) => String(grown.length))],
    [words.firstYears, judged.seasons.map(({ firstYear }) => String(firstYear.length))],
    [words.covers, judged.seasons.map(({ covered }) => String(covered.length))],
    [words.ground2, judged.seasons.map(({ groundM2 }) => groundWords(groundM2, { units }))],
  ];
  return (
    <tfoot>
      {rows.map(([head, cells]) => (
        <tr key={head}>
          <th scope="row" colSpan={2}>
            {head}
          </th>
          {cells.map((cell, season) => (
            <td key={names.seasons[season] ?? season} className="years-total">
              {cell}
            </td>
          ))}
        </tr>
      ))}
    </tfoot>
  );
}
