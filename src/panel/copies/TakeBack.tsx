import { useMemo, useState } from "react";
import { wordingOf } from "../../core/checks/checked-layout.ts";
import type { Edit } from "../../core/edits/edit.ts";
import type { Entry, Plan } from "../../core/model/plan.ts";
import { type PlanDifference, mergePlans } from "../../core/record/merge-plans.ts";
import { sidesOf } from "../../core/record/merge-sides.ts";
import { validText } from "../../store/keeping/plan-text.ts";
import { commit, useKept } from "../state/plan-actions.ts";
import { DifferenceList } from "./DifferenceList.tsx";
import { comingText, copiesWords as words, entryLine, takeText } from "./copies-words.ts";
import * as texts from "./words.ts";

interface TakeBackProps {
  readonly fileName: string;
  readonly theirs: Plan;
  readonly onDone: () => void;
}

/** What a returned copy brings: entries all, changes to the plan only as they are ticked. */
export function TakeBack({ fileName, theirs, onDone }: TakeBackProps) {
  const kept = useKept();
  const { plan } = kept;
  const [taken, setTaken] = useState<ReadonlySet<string>>(new Set());
  const merged = useMemo(() => mergePlans(plan, theirs, taken), [plan, theirs, taken]);
  const sides = useMemo(() => sidesOf(plan, theirs), [plan, theirs]);
  if (!merged.ok) {
    return (
      <p className="field-reason" role="alert">
        {texts.gotExpected(fileName, merged.got, merged.expected)}
      </p>
    );
  }
  const here = new Set(plan.entries.map(({ id }) => id));
  const coming = merged.plan.entries.filter(({ id }) => !here.has(id));
  const changes = merged.differences.filter(({ isTaken }) => isTaken).length;
  const written = validText(merged.plan);
  const take = () => {
    commit(bringIn(theirs, taken, words.takenFrom(takeText(coming.length, changes), fileName)));
    onDone();
  };
  const tick = (difference: PlanDifference, isOn: boolean) => {
    const next = new Set(taken);
    if (isOn) next.add(difference.id);
    else next.delete(difference.id);
    setTaken(next);
  };
  const isNothing = coming.length === 0 && changes === 0;
  return (
    <>
      <ComingEntries coming={coming} nameOf={wordingOf(kept).nameOf} />
      <Clashes clashes={merged.clashes} nameOf={wordingOf(kept).nameOf} />
      <h4>{words.changes}</h4>
      {merged.differences.length === 0 && <p>{words.noChanges}</p>}
      <DifferenceList differences={merged.differences} sidesOf={sides} onTick={tick} />
      {!written.ok && (
        <p className="field-reason" role="alert">
          {words.blocked}: {written.fault}.
        </p>
      )}
      <p className="dialog-actions">
        <button
          type="button"
          className="primary"
          disabled={isNothing || !written.ok}
          onClick={take}
        >
          {takeText(coming.length, changes)}
        </button>
        <button type="button" onClick={onDone}>
          {words.leave}
        </button>
      </p>
    </>
  );
}

/** One step, worked out anew on the plan as it then is. */
function bringIn(theirs: Plan, taken: ReadonlySet<string>, title: string): Edit {
  return {
    title,
    apply: (plan) => {
      const merged = mergePlans(plan, theirs, taken);
      return merged.ok ? merged.plan : plan;
    },
  };
}

interface EntriesProps {
  readonly nameOf: (id: string) => string;
}

/** Entries listed before "and more": a season of a helper's is long. */
const FIRST_ENTRIES = 50;

function ComingEntries({ coming, nameOf }: EntriesProps & { readonly coming: readonly Entry[] }) {
  if (coming.length === 0) return <p>{words.none}</p>;
  return (
    <details>
      <summary>{comingText(coming)}</summary>
      <ul className="coming-entries">
        {coming.slice(0, FIRST_ENTRIES).map((entry) => (
          <li key={entry.id}>{entryLine(entry, nameOf(entry.of))}</li>
        ))}
      </ul>
      {coming.length > FIRST_ENTRIES && <p>{texts.andMore(coming.length - FIRST_ENTRIES)}</p>}
    </details>
  );
}

function Clashes({ clashes, nameOf }: EntriesProps & { readonly clashes: readonly Entry[] }) {
  if (clashes.length === 0) return null;
  return (
    <div className="notice">
      <p>{words.clashes}:</p>
      <ul className="coming-entries">
        {clashes.map((entry) => (
          <li key={entry.id}>{entryLine(entry, nameOf(entry.of))}</li>
        ))}
      </ul>
    </div>
  );
}
