import { useEffect, useId, useRef, useState } from "react";
import { CountField } from "../form/NumberField.tsx";
import { onFormSubmit } from "../form/use-form.ts";
import { planNow, useKept } from "../state/plan-actions.ts";
import type { ClearRequest } from "../../store/threads/clear-worker.ts";
import { ClearingAnswer } from "./ClearingAnswer.tsx";
import { useClearingState } from "./clearing-state.ts";
import {
  ALLOWED,
  ANY_NUMBER,
  CANCEL,
  CLOSE,
  HEADING,
  LOOKING,
  LOOK_AGAIN,
  MAY_WAIT,
  MOST_CAGES,
  MOST_DAYS,
  STAY,
  lookingText,
} from "./clearing-words.ts";
import { tiedObjects, tiedVarieties } from "./tied.ts";
import { useClearing } from "./use-clearing.ts";
import "./clearing.css";

/** Days a start may move unless something else is allowed. No source; our choice. */
const USUAL_DAYS = 42;
/** Longest time for a proof, seconds. */
const PROOF_SECONDS = 12;

type Allowed = Omit<ClearRequest, "plan" | "layoutId" | "seconds">;

/** The fewest and mildest changes that clear all conflicts of the layout together. */
export function ClearEverything() {
  const headingId = useId();
  const heading = useRef<HTMLHeadingElement>(null);
  const kept = useKept();
  const [allowed, setAllowed] = useState<Allowed>(() => ({
    mostCages: null,
    mostDays: USUAL_DAYS,
    staying: [],
    mayWait: tiedVarieties(planNow().kept).map(({ id }) => id),
  }));
  const requestNow = () => ({
    plan: planNow().kept.plan,
    layoutId: planNow().kept.layout.id,
    seconds: PROOF_SECONDS,
    ...allowed,
  });
  const { stage, start } = useClearing(requestNow);
  useEffect(() => {
    heading.current?.focus();
    heading.current?.scrollIntoView({ block: "nearest" });
  }, []);
  return (
    <section className="clearing" aria-labelledby={headingId}>
      <header className="region-head">
        <h3 id={headingId} ref={heading} tabIndex={-1}>
          {HEADING}
        </h3>
        <button type="button" className="quiet" onClick={close}>
          {stage.kind === "running" ? CANCEL : CLOSE}
        </button>
      </header>
      {stage.kind === "running" && (
        <>
          <p role="status">{stage.left === null ? LOOKING : lookingText(stage.left)}</p>
          <progress aria-label={LOOKING} />
        </>
      )}
      {stage.kind === "failed" && <p role="alert">{stage.reason}</p>}
      {stage.kind === "done" && (
        <ClearingAnswer key={stage.request.plan.id} answer={stage.answer} request={stage.request} />
      )}
      {stage.kind !== "running" && (
        <AllowedForm
          allowed={allowed}
          kept={kept}
          onSet={setAllowed}
          onLook={() => start(requestNow())}
        />
      )}
    </section>
  );
}

function close(): void {
  useClearingState.getState().ask(false);
}

interface AllowedFormProps {
  readonly allowed: Allowed;
  readonly kept: ReturnType<typeof useKept>;
  readonly onSet: (allowed: Allowed) => void;
  readonly onLook: () => void;
}

function AllowedForm({ allowed, kept, onSet, onLook }: AllowedFormProps) {
  const objects = tiedObjects(kept);
  const varieties = tiedVarieties(kept);
  return (
    <details className="clearing-allowed">
      <summary>{ALLOWED}</summary>
      <form className="fields" noValidate onSubmit={onFormSubmit(onLook)}>
        <CountField
          label={MOST_CAGES}
          value={allowed.mostCages ?? undefined}
          hint={ANY_NUMBER}
          onApply={(count) => onSet({ ...allowed, mostCages: count ?? null })}
        />
        <CountField
          label={MOST_DAYS}
          value={allowed.mostDays}
          onApply={(count = 0) => onSet({ ...allowed, mostDays: count })}
        />
        <Ticks
          legend={STAY}
          items={objects}
          ticked={allowed.staying}
          onTick={(staying) => onSet({ ...allowed, staying })}
        />
        <Ticks
          legend={MAY_WAIT}
          items={varieties}
          ticked={allowed.mayWait}
          onTick={(mayWait) => onSet({ ...allowed, mayWait })}
        />
        <p className="dialog-actions">
          <button type="submit">{LOOK_AGAIN}</button>
        </p>
      </form>
    </details>
  );
}

interface TicksProps {
  readonly legend: string;
  readonly items: readonly { readonly id: string; readonly name: string }[];
  readonly ticked: readonly string[];
  readonly onTick: (ids: readonly string[]) => void;
}

function Ticks({ legend, items, ticked, onTick }: TicksProps) {
  if (items.length === 0) return null;
  return (
    <fieldset>
      <legend>{legend}</legend>
      {items.map(({ id, name }) => (
        <label key={id} className="check-field">
          <input
            type="checkbox"
            checked={ticked.includes(id)}
            onChange={({ target }) =>
              onTick(target.checked ? [...ticked, id] : ticked.filter((each) => each !== id))
            }
          />
          {name}
        </label>
      ))}
    </fieldset>
  );
}
