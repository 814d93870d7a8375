import { useState } from "react";
import { moveLots } from "../../core/edits/lot-edits.ts";
import { lotBook } from "../../core/lots/lot-book.ts";
import type { Plan } from "../../core/model/plan.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { DayField } from "../form/DayField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { FormProblem } from "../form/Field.tsx";
import { onFormSubmit } from "../form/use-form.ts";
import { commit, useKept } from "../state/plan-actions.ts";
import { storagePlaces } from "../storage/commands.ts";
import { lotRefusal } from "./lot-change.ts";
import { runCommand } from "../commands/command.ts";
import { today } from "../state/today.ts";
import * as texts from "./words.ts";

interface MoveLotsDialogProps {
  readonly ids: readonly string[];
  readonly onClose: () => void;
}

/** Where lots lie, and since when; what they lay in before still counts. */
export function MoveLotsDialog({ ids, onClose }: MoveLotsDialogProps) {
  const { plan } = useKept();
  const lots = ids.flatMap((id) => lotBook(plan.lots).lot(id) ?? []);
  const hasStays = lots.some(({ stored }) => stored !== undefined);
  const [place, setPlace] = useState(plan.storagePlaces[0]?.id ?? "");
  const [from, setFrom] = useState<number | undefined>(hasStays ? today() : undefined);
  const [problem, setProblem] = useState<string | null>(null);
  const what = texts.lotsNamed(lots);
  const move = () => {
    const name = plan.storagePlaces.find(({ id }) => id === place)?.name;
    if (name === undefined) return setProblem(texts.choosePlace);
    const edit = moveLots(ids, place, from, texts.moveTo(what, name));
    const refusal = moveRefusal(edit.apply(plan), ids);
    setProblem(refusal);
    if (refusal !== null) return;
    commit(edit);
    onClose();
  };
  return (
    <Dialog title={texts.moveWhat(what)} onClose={onClose}>
      {plan.storagePlaces.length === 0 ? (
        <NoPlace />
      ) : (
        <form className="fields" noValidate onSubmit={onFormSubmit(move)}>
          <ChoiceField
            label={texts.into}
            value={place}
            choices={plan.storagePlaces.map(({ id, name }) => ({ value: id, label: name }))}
            onPick={(picked) => {
              setPlace(picked);
              setProblem(null);
            }}
          />
          <DayField
            label={texts.since}
            value={from}
            placeholder={texts.fromTheStart}
            hint={texts.leftEmptyLayThere}
            onApply={(day) => {
              setFrom(day);
              setProblem(null);
              return null;
            }}
          />
          <FormProblem problem={problem} />
          <p className="dialog-actions">
            <button type="submit" className="primary">
              {texts.move}
            </button>
          </p>
        </form>
      )}
    </Dialog>
  );
}

function NoPlace() {
  return (
    <>
      <p>{texts.thereNoStoragePlace}</p>
      <p className="dialog-actions">
        <button type="button" className="primary" onClick={() => runCommand(storagePlaces)}>
          {texts.addAStoragePlace}
        </button>
      </p>
    </>
  );
}

/** The first lot that could not be kept so, and why. */
function moveRefusal(plan: Plan, ids: readonly string[]): string | null {
  for (const id of ids) {
    const lot = lotBook(plan.lots).lot(id);
    const refusal = lot ? lotRefusal(plan, lot) : null;
    if (lot && refusal !== null) return `${lot.code}: ${refusal}`;
  }
  return null;
}
