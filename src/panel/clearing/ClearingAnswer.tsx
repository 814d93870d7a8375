import { useEffect, useMemo, useState } from "react";
import { type Finding, describeFinding } from "../../core/checks/all-checks.ts";
import { type CheckedLayout, recheckLayout, wordingOf } from "../../core/checks/checked-layout.ts";
import { type ClearingStep, isHarm } from "../../core/clearing/clearing-steps.ts";
import {
  LEFT_ADVICE,
  STALE,
  TOO_SOON,
  outcomeWords,
  proofWords,
  unknownWords,
} from "../../core/clearing/clearing-words.ts";
import { makeChanges } from "../../core/clearing/object-change.ts";
import type { Edit } from "../../core/edits/edit.ts";
import { broughtFindings } from "../../core/remedies/remedy.ts";
import type { ClearAnswer, ClearRequest } from "../../store/threads/clear-worker.ts";
import { type PlanState, usePlanStore } from "../../store/plan/plan-store.ts";
import { previewHere } from "../state/followed-plan.ts";
import { commit, planNow, useKept } from "../state/plan-actions.ts";
import {
  APPLIED,
  APPLY,
  APPLY_ALL,
  BRINGS,
  CANCEL,
  CHANGES,
  LEFT,
  TRY,
  UNDO_TITLE,
  WHAT_IT_TAKES,
  clearsText,
} from "./clearing-words.ts";

interface ClearingAnswerProps {
  readonly answer: ClearAnswer;
  readonly request: ClearRequest;
}

/** The changes found: all tried on the sheet or applied together, or applied one by one. */
export function ClearingAnswer({ answer, request }: ClearingAnswerProps) {
  const kept = useKept();
  const { steps, all, done, isStale, tooSoon, apply, applyOne } = useSteps(answer, request);
  const tried = usePlanStore(triedEdit) === all;
  useEffect(() => putBack, []);
  return (
    <>
      <div role="status">
        <p>
          <strong>{outcomeWords(answer)}</strong>
        </p>
        <p className="soft">{proofWords(answer)}</p>
        {answer.unknowns > 0 && <p>{unknownWords(answer)}</p>}
        {isStale && <p>{STALE}</p>}
      </div>
      {steps.length > 0 && !isStale && (
        <p className="finding-actions">
          <button type="button" className="primary" onClick={() => apply(all, steps)}>
            {APPLY_ALL}
          </button>
          <button type="button" onClick={() => (tried ? putBack() : previewHere(all, "trial"))}>
            {tried ? CANCEL : TRY}
          </button>
        </p>
      )}
      <ol className="clearing-steps" aria-label={CHANGES}>
        {answer.steps.map((step) => (
          <StepLine
            key={idOf(step)}
            step={step}
            isDone={done.has(step)}
            isTooSoon={tooSoon === step}
            onApply={isStale ? null : () => applyOne(step)}
          />
        ))}
      </ol>
      <FindingTitles heading={LEFT} findings={answer.left} kept={kept} advice={LEFT_ADVICE} />
      <FindingTitles heading={BRINGS} findings={answer.brings} kept={kept} />
    </>
  );
}

const idOf = ({ changes }: ClearingStep) => changes.map(({ id }) => id).join("; ");
const titleOf = ({ changes }: ClearingStep) => changes.map(({ title }) => title).join("; ");

/** The steps that are left, and what applies them to the plan they were found for. */
function useSteps(answer: ClearAnswer, { plan, layoutId }: ClearRequest) {
  const kept = useKept();
  // The plan as it is known here: as it was looked at, then as each step applied here left it.
  const [known, setKnown] = useState(plan);
  const [done, setDone] = useState<ReadonlySet<ClearingStep>>(new Set());
  const [tooSoon, setTooSoon] = useState<ClearingStep | null>(null);
  const { steps, all } = useMemo(() => {
    const left = answer.steps.filter((step) => !done.has(step));
    const changes = left.map(({ change }) => change);
    return { steps: left, all: makeChanges(layoutId, changes, UNDO_TITLE) };
  }, [layoutId, done, answer]);
  const apply = (edit: Edit, made: readonly ClearingStep[]) => {
    putBack();
    commit(edit);
    setKnown(planNow().kept.plan);
    setDone(new Set([...done, ...made]));
    setTooSoon(null);
  };
  const applyOne = (step: ClearingStep) => {
    const edit = makeChanges(layoutId, [step.change], titleOf(step));
    if (bringsHarm(kept, edit)) setTooSoon(step);
    else apply(edit, [step]);
  };
  const isStale = kept.plan !== known || kept.layout.id !== layoutId;
  return { steps, all, done, isStale, tooSoon, apply, applyOne };
}

/** Whether it brings what nothing here may bring, as the plan is now. */
function bringsHarm(kept: CheckedLayout, edit: Edit): boolean {
  const after = recheckLayout(kept, edit.apply(kept.plan));
  return !after || broughtFindings(kept.result, after.result).some(isHarm);
}

function triedEdit({ previewing }: PlanState): Edit | null {
  return previewing?.by === "trial" ? previewing.edit : null;
}

function putBack(): void {
  const { previewing, cancelPreview } = planNow();
  if (previewing?.by === "trial") cancelPreview();
}

interface StepLineProps {
  readonly step: ClearingStep;
  readonly isDone: boolean;
  readonly isTooSoon: boolean;
  /** Null: the plan has been changed since. */
  readonly onApply: (() => void) | null;
}

function StepLine({ step, isDone, isTooSoon, onApply }: StepLineProps) {
  const { changes, clears } = step;
  const notes = changes.flatMap((change) => change.notes);
  return (
    <li>
      {changes.map(({ id, title }) => (
        <p key={id} className="way-out-title">
          {title}{" "}
          {clears.length > 0 && <span className="way-out-effect">{clearsText(clears.length)}</span>}
        </p>
      ))}
      {notes.length > 0 && (
        <details>
          <summary>{WHAT_IT_TAKES}</summary>
          <p className="way-out-notes">{notes.join(" ")}</p>
        </details>
      )}
      {isTooSoon && <p role="alert">{TOO_SOON}</p>}
      {isDone && <p className="clear-text">{APPLIED}</p>}
      {!isDone && onApply && (
        <button
          type="button"
          className="act"
          aria-label={`${APPLY}: ${titleOf(step)}`}
          onClick={onApply}
        >
          {APPLY}
        </button>
      )}
    </li>
  );
}

interface FindingTitlesProps {
  readonly heading: string;
  readonly findings: readonly Finding[];
  readonly kept: CheckedLayout;
  readonly advice?: string;
}

function FindingTitles({ heading, findings, kept, advice }: FindingTitlesProps) {
  if (findings.length === 0) return null;
  const wording = wordingOf(kept);
  return (
    <details>
      <summary>
        {heading} ({findings.length})
      </summary>
      <ul className="plain-list way-out-notes">
        {findings.map((finding) => (
          <li key={finding.id}>{describeFinding(finding, wording).title}</li>
        ))}
      </ul>
      {advice !== undefined && <p className="way-out-notes">{advice}</p>}
    </details>
  );
}
