import { useId, useState } from "react";
import { type Edit, patched } from "../../core/edits/edit.ts";
import { addVariety, changeVariety, removeVariety } from "../../core/edits/object-edits.ts";
import type { Variety } from "../../core/model/plan.ts";
import { CheckField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { FormChoice } from "./FormChoice.tsx";
import { KindField } from "../kinds/KindField.tsx";
import { CountField } from "../form/NumberField.tsx";
import { TextField } from "../form/TextField.tsx";
import { SeedWanted } from "./SeedWanted.tsx";
import { type Aside, VarietyAside } from "./VarietyAside.tsx";
import { VarietyFigures } from "./VarietyFigures.tsx";
import { nameProblem } from "../form/name-problem.ts";
import { useForm } from "../form/use-form.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { blankVariety, varietyProblem, withKind } from "./variety-edit.ts";
import { commit, planNow, windowNow } from "../state/plan-actions.ts";
import * as texts from "./dialog-words.ts";

interface VarietyDialogProps {
  /** Null for a new variety. */
  readonly id: string | null;
  readonly onClose: () => void;
}

export function VarietyDialog({ id, onClose }: VarietyDialogProps) {
  const plan = useShownPlan();
  const existing = plan.varieties.find((entry) => entry.id === id);
  const form = useForm<Variety>({
    start: () => existing ?? blankVariety(plan),
    problemOf: (typed) => varietyProblem(plan, typed),
    send: () => keep(isSeries),
  });
  const { draft: variety, problem, alter } = form;
  const set = (changes: VarietyChanges) => alter((before) => patched<Variety>(before, changes));
  const setKind = (kind: string, formId?: string) =>
    alter((before) => ofKind(before, kind, formId));
  const [aside, setAside] = useState<Aside | null>(null);
  // Once several are typed one after the other, Enter adds and goes on.
  const [isSeries, setSeries] = useState(false);
  const problemId = useId();
  const keep = (isAnother: boolean) => {
    if (!form.check()) return;
    commit(existing ? changeAll(existing, variety) : addVariety(variety));
    if (!isAnother) {
      onClose();
      return;
    }
    setSeries(true);
    // The next one is often of the same kind; only its name is new.
    const { kind } = variety;
    alter(() => ({ ...blankVariety(planNow().plan), kind }));
    windowNow().announce(texts.addedNext(variety.name));
  };
  return (
    <Dialog title={titleOf(existing)} onClose={onClose} isWide>
      <form className="fields" noValidate onSubmit={form.onSubmit}>
        <VarietyFields variety={variety} onSet={set} onKind={setKind} onAside={setAside} />
        <VarietyFigures
          variety={variety}
          onChange={set}
          onRead={() => setAside({ kind: "figures" })}
        />
        <SeedWanted variety={variety} onSet={set} />
        {problem !== null && (
          <p className="field-reason" id={problemId} role="alert">
            {problem}
          </p>
        )}
        <VarietyActions
          existing={existing ?? null}
          isSeries={isSeries}
          onKeep={keep}
          onClose={onClose}
        />
      </form>
      <VarietyAside
        aside={aside}
        variety={variety}
        onFigure={(figure) => set({ figure })}
        onKind={setKind}
        onClose={() => setAside(null)}
      />
    </Dialog>
  );
}

function titleOf(existing: Variety | undefined): string {
  return existing ? texts.edit(existing.name) : texts.addAVariety;
}

type VarietyChanges = Partial<{ [Key in keyof Variety]: Variety[Key] | undefined }>;

function ofKind(before: Variety, kind: string, form: string | undefined): Variety {
  const next = withKind(before, kind);
  return form === undefined ? next : { ...next, form };
}

interface VarietyFieldsProps {
  readonly variety: Variety;
  readonly onSet: (changes: VarietyChanges) => null;
  readonly onKind: (kind: string, form?: string) => void;
  readonly onAside: (aside: Aside) => void;
}

/** What it is, and how many plants of it are wanted. */
function VarietyFields({ variety, onSet, onKind, onAside }: VarietyFieldsProps) {
  return (
    <>
      <TextField
        label={texts.nameField}
        value={variety.name}
        isWide
        onApply={(text) => nameProblem(text) ?? onSet({ name: text.trim() })}
      />
      <KindField
        kindId={variety.kind === "" ? undefined : variety.kind}
        onPick={onKind}
        onAdd={(name) => onAside({ kind: "own-kind", name })}
      />
      <FormChoice variety={variety} onPick={(form) => onSet({ form })} />
      <CountField
        label={texts.plantsWanted}
        value={variety.wantedPlants}
        onApply={(wantedPlants) => {
          onSet({ wantedPlants });
        }}
      />
      <CheckField
        label={texts.hybridSeedDoesNot}
        isOn={variety.hybrid === true}
        onSet={(isOn) => onSet({ hybrid: isOn ? true : undefined })}
      />
    </>
  );
}

interface VarietyActionsProps {
  readonly existing: Variety | null;
  readonly isSeries: boolean;
  readonly onKeep: (isAnother: boolean) => void;
  readonly onClose: () => void;
}

/** The button that Enter presses comes first. */
function VarietyActions({ existing, isSeries, onKeep, onClose }: VarietyActionsProps) {
  if (existing) {
    return (
      <p className="dialog-actions">
        <button type="submit" className="primary">
          {texts.apply}
        </button>
        <RemoveVariety variety={existing} onClose={onClose} />
      </p>
    );
  }
  const next = (
    <button
      key="next"
      type={isSeries ? "submit" : "button"}
      className={isSeries ? "primary" : undefined}
      onClick={(event) => {
        if (!isSeries) onKeep(true);
        event.currentTarget.form?.querySelector("input")?.focus();
      }}
    >
      {texts.addTypeNext}
    </button>
  );
  const last = (
    <button
      key="last"
      type={isSeries ? "button" : "submit"}
      className={isSeries ? undefined : "primary"}
      onClick={() => {
        if (isSeries) onKeep(false);
      }}
    >
      {texts.addSeedList}
    </button>
  );
  return <p className="dialog-actions">{isSeries ? [next, last] : [last, next]}</p>;
}

/** Fields that were taken away are named as undefined, so that the edit takes them away too. */
function changeAll(before: Variety, { id, ...changes }: Variety): Edit {
  const gone = Object.keys(before).filter((key) => key !== "id" && !(key in changes));
  const all = { ...Object.fromEntries(gone.map((key) => [key, undefined])), ...changes };
  return changeVariety(id, all, texts.changeVariety(changes.name));
}

function RemoveVariety({ variety, onClose }: { variety: Variety; onClose: () => void }) {
  const plan = useShownPlan();
  const plantings = plan.layouts.flatMap((layout) =>
    layout.plantings.filter((planting) => planting.variety === variety.id),
  ).length;
  const lots = plan.lots.filter((lot) => lot.variety === variety.id).length;
  const remove = () => {
    commit(removeVariety(variety.id, texts.deleteVariety(variety.name)));
    onClose();
  };
  return (
    <button type="button" onClick={remove}>
      {texts.deleteVarietyWith(plantings, lots)}
    </button>
  );
}
