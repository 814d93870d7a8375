import { useMemo, useState } from "react";
import {
  importOutlines,
  importProblems,
  placedTraces,
  pollenKind,
  suggestedRole,
} from "../../core/outlines/import-outlines.ts";
import type { TraceChoice } from "../../core/outlines/place-trace.ts";
import type { Trace } from "../../core/outlines/trace.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { LengthField } from "../form/LengthField.tsx";
import { OutlineImportTable } from "./OutlineImportTable.tsx";
import { positionWords, takeOutlinesWords } from "./outline-words.ts";
import { commit, windowNow } from "../state/plan-actions.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./words.ts";

/** A hand-held receiver is good for some metres; a hedge or path is about this wide. */
const USUAL = { toleranceM: 0.2, widthM: 1 } as const;

interface OutlineImportChoicesProps {
  readonly fileName: string;
  readonly traces: readonly Trace[];
  readonly onDone: () => void;
}

/** What each outline of the file becomes. */
export function OutlineImportChoices({ fileName, traces, onDone }: OutlineImportChoicesProps) {
  const plan = useShownPlan();
  const layout = useShownLayout();
  const [choices, setChoices] = useState<ReadonlyMap<number, TraceChoice>>(new Map());
  const [toleranceM, setTolerance] = useState<number>(USUAL.toleranceM);
  const choiceOf = useMemo(
    () => (trace: Trace) =>
      choices.get(trace.number) ?? { role: suggestedRole(trace), widthM: USUAL.widthM },
    [choices],
  );
  const imported = useMemo(
    () => placedTraces(plan, traces, choiceOf, toleranceM),
    [plan, traces, choiceOf, toleranceM],
  );
  const problems = importProblems(plan, imported);
  const book = usePlanStore((state) => state.book);
  const kindName = book.kind(pollenKind(plan) ?? "")?.name ?? texts.ofNoKind;
  const hasPollen = imported.some(({ choice }) => choice.role === "pollen");
  const choose = (chosen: readonly Trace[], change: Partial<TraceChoice>) => {
    const next = new Map(choices);
    for (const trace of chosen) next.set(trace.number, { ...choiceOf(trace), ...change });
    setChoices(next);
  };
  const take = () => {
    commit(importOutlines(layout.id, traces, imported, fileName));
    windowNow().bringIntoView("all");
    onDone();
  };
  return (
    <>
      <p>{positionWords(plan, traces)}</p>
      <LengthField
        label={texts.simplifyDropCornersCloser}
        hint={texts.outlineWithoutThemKeeps}
        value={toleranceM}
        onApply={(metres) => {
          setTolerance(metres);
          return null;
        }}
      />
      <OutlineImportTable
        traces={traces}
        imported={imported}
        choiceOf={choiceOf}
        onChoose={choose}
      />
      {hasPollen && <p>{texts.pollenSourcesTakenTheir(kindName)}</p>}
      <TakeThem count={imported.length} problems={problems} onTake={take} onDone={onDone} />
    </>
  );
}

interface TakeThemProps {
  readonly count: number;
  readonly problems: readonly string[];
  readonly onTake: () => void;
  readonly onDone: () => void;
}

function TakeThem({ count, problems, onTake, onDone }: TakeThemProps) {
  return (
    <>
      <div className="field-reason" role="alert">
        {problems.slice(0, 10).map((problem) => (
          <p key={problem}>{problem}</p>
        ))}
      </div>
      <p className="dialog-actions">
        <button
          type="button"
          className="primary"
          disabled={count === 0 || problems.length > 0}
          onClick={onTake}
        >
          {takeOutlinesWords(count)}
        </button>
        <button type="button" onClick={onDone}>
          {texts.cancel}
        </button>
      </p>
    </>
  );
}
