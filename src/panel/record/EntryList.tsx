import { useMemo } from "react";
import { longDate } from "../../core/model/day.ts";
import type { Entry } from "../../core/model/plan.ts";
import { recordDoubts } from "../../core/record/record-doubts.ts";
import { doubtWords } from "../../core/record/doubt-words.ts";
import { type RecordLine, recordLines } from "../../core/record/record-lines.ts";
import { useRovingRows } from "../state/roving-rows.ts";
import { today } from "../state/today.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { entryDialog } from "./dialogs.ts";
import {
  beforeWords,
  byWords,
  lineWords,
  nameOfEntry,
  recordWords as words,
  struckWords,
} from "./record-words.ts";
import { strikeOut } from "./write-down.ts";
import "./record.css";

interface EntryListProps {
  /** Id of the planting or surrounding. */
  readonly of: string;
  /** Its code or name. */
  readonly plot: string;
  readonly isOurs: boolean;
}

/** What was written down of one plot or neighbour, the latest first, and a way to add to it. */
export function EntryList({ of, plot, isOurs }: EntryListProps) {
  const plan = useShownPlan();
  const lines = useMemo(() => recordLines(plan.entries, of), [plan.entries, of]);
  const doubts = useDoubts();
  const roving = useRovingRows();
  return (
    <>
      <h4>{words.heading}</h4>
      {lines.length === 0 && <p>{words.none}</p>}
      {lines.length > 0 && (
        <ul className="plain-list" aria-label={words.heading} {...roving}>
          {lines.map((line) => (
            <EntryLine
              key={line.entry.id}
              line={line}
              doubts={doubts.get(line.entry.id) ?? []}
              plot={plot}
              onCorrect={() => entryDialog.open({ of, plot, isOurs, wrong: line.entry })}
            />
          ))}
        </ul>
      )}
      <p className="offers">
        <button type="button" onClick={() => entryDialog.open({ of, plot, isOurs, wrong: null })}>
          {words.add}
        </button>
      </p>
    </>
  );
}

/** What cannot be right, by id of the entry, in words. */
export function useDoubts(): ReadonlyMap<string, readonly string[]> {
  const plan = useShownPlan();
  return useMemo(() => {
    const byEntry = new Map<string, readonly string[]>();
    for (const { entry, doubt } of recordDoubts(plan, today())) {
      byEntry.set(entry.id, [...(byEntry.get(entry.id) ?? []), doubtWords[doubt]]);
    }
    return byEntry;
  }, [plan]);
}

interface EntryLineProps {
  readonly line: RecordLine;
  readonly doubts: readonly string[];
  readonly plot: string;
  readonly onCorrect: () => void;
}

function EntryLine({ line, doubts, plot, onCorrect }: EntryLineProps) {
  const { entry, before, struck } = line;
  return (
    <li className="record-line" data-row="">
      <p>
        <span className="record-day">{longDate(entry.on)}</span>{" "}
        {struck ? <s>{lineWords(entry)}</s> : lineWords(entry)} <By entry={entry} />
      </p>
      {before && <p className="field-hint">{beforeWords(before)}</p>}
      {struck && <p className="field-hint">{struckWords(struck)}</p>}
      {doubts.map((doubt) => (
        <p key={doubt} className="caution-text">
          ! {doubt}
        </p>
      ))}
      {!struck && (
        <p className="list-row-actions">
          <button
            type="button"
            className="act"
            aria-label={`${words.correct}: ${nameOfEntry(entry)}`}
            onClick={onCorrect}
          >
            {words.correct}
          </button>
          <button
            type="button"
            className="act"
            aria-label={`${words.strike}: ${nameOfEntry(entry)}`}
            onClick={() => strikeOut(entry, plot)}
          >
            {words.strike}
          </button>
        </p>
      )}
    </li>
  );
}

function By({ entry }: { readonly entry: Entry }) {
  const by = byWords(entry);
  return by === "" ? null : <span className="soft">{by}</span>;
}
