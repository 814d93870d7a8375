import { useEffect, useMemo, useState } from "react";
import { type Finding, checkOf, describeFinding } from "../../core/checks/all-checks.ts";
import { type CheckedLayout, wordingOf } from "../../core/checks/checked-layout.ts";
import { severitySign, severityWord } from "../../core/checks/wording.ts";
import { type DayNumber, shortDate } from "../../core/model/day.ts";
import { fieldChanges, standingSince } from "../../core/record/field-changes.ts";
import { asGrownWords, coversNotCounted, doubtLines } from "../../core/record/field-words.ts";
import { today } from "../state/today.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { predictedAndSeen } from "./commands.ts";
import { grownWords as words } from "./grown-words.ts";

interface FieldChangesProps {
  readonly onWaysOut: (findingId: string) => void;
}

/** What the field changed, before everything else: new findings, what is settled, what is in doubt. */
export function FieldChanges({ onWaysOut }: FieldChangesProps) {
  const kept = usePlanStore((state) => state.kept);
  const grown = usePlanStore((state) => state.grown);
  const on = usePlanStore((state) => state.reading?.on);
  if (!grown || on === undefined) return null;
  return <Changes kept={kept} grown={grown} on={on} onWaysOut={onWaysOut} />;
}

interface ChangesProps extends FieldChangesProps {
  readonly kept: CheckedLayout;
  readonly grown: CheckedLayout;
  readonly on: DayNumber;
}

function Changes({ kept, grown, on, onWaysOut }: ChangesProps) {
  const { worse, gone } = useMemo(() => fieldChanges(kept, grown), [kept, grown]);
  const covers = useMemo(() => coversNotCounted(kept, grown, on), [kept, grown, on]);
  const doubts = useMemo(() => doubtLines(kept, Math.max(on, today())), [kept, on]);
  const since = useSince(kept, grown, worse, on);
  const settled = gone.map((finding) => describeFinding(finding, wordingOf(kept)).title);
  return (
    <section className="field-changes" aria-label={words.changed}>
      <p className="region-note">{asGrownWords(kept.plan, on)}.</p>
      {worse.length + gone.length === 0 && <p>{words.nothing}</p>}
      <ul className="plain-list">
        {worse.map((finding) => (
          <NewFinding
            key={finding.id}
            finding={finding}
            title={describeFinding(finding, wordingOf(grown)).title}
            since={since?.get(finding.id) ?? null}
            onWaysOut={onWaysOut}
          />
        ))}
      </ul>
      <Lines title={words.settled} lines={settled} />
      <Lines title={words.covers} lines={covers} />
      {doubts.length > 0 && (
        <details open>
          <summary>{words.doubts(doubts.length)}</summary>
          <ul>
            {doubts.map((line, index) => (
              <li key={`${index} ${line}`}>{line}</li>
            ))}
          </ul>
        </details>
      )}
      <p>
        <CommandButton of={predictedAndSeen} className="link">
          {words.learn}
        </CommandButton>
      </p>
      <p className="field-hint">{words.moved}</p>
    </section>
  );
}

/** Looked back for after the change is on screen: it takes a judgment for each day of the record. */
function useSince(
  kept: CheckedLayout,
  grown: CheckedLayout,
  worse: readonly Finding[],
  on: DayNumber,
): ReadonlyMap<string, DayNumber> | null {
  const [since, setSince] = useState<ReadonlyMap<string, DayNumber> | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => setSince(standingSince(kept, grown, worse, on)), 0);
    return () => clearTimeout(timer);
  }, [kept, grown, worse, on]);
  return since;
}

interface NewFindingProps extends FieldChangesProps {
  readonly finding: Finding;
  readonly title: string;
  readonly since: DayNumber | null;
}

function NewFinding({ finding, title, since, onWaysOut }: NewFindingProps) {
  const { id, severity } = finding;
  return (
    <li className={`new-finding ${severity}`}>
      <span className="sign" aria-hidden="true">
        {severitySign[severity]}
      </span>{" "}
      {since === null ? words.isNew : words.since(shortDate(since))}: {severityWord[severity]},{" "}
      {title}
      {checkOf(finding).hasWaysOut === true && (
        <>
          {" "}
          <button
            type="button"
            className="link"
            aria-label={`${words.wayOut}: ${title}`}
            onClick={() => onWaysOut(id)}
          >
            {words.wayOut}
          </button>
        </>
      )}
    </li>
  );
}

function Lines({ title, lines }: { readonly title: string; readonly lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
}
