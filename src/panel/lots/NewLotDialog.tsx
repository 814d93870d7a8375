import { useMemo, useState } from "react";
import { addLots, nextLotId } from "../../core/edits/lot-edits.ts";
import { patched } from "../../core/edits/edit.ts";
import type { Kind } from "../../core/kinds/crop.ts";
import type { Lot, Plan } from "../../core/model/plan.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { FormProblem } from "../form/Field.tsx";
import { onFormSubmit } from "../form/use-form.ts";
import { TextField } from "../form/TextField.tsx";
import { commit, planNow, useKept, windowNow } from "../state/plan-actions.ts";
import { viewNow } from "../state/view-state.ts";
import { amountText, otherAmountWords, readAmount } from "../../core/lots/amount-text.ts";
import { CodePatternField } from "./CodePatternField.tsx";
import { type LotChanges, lotRefusal } from "./lot-change.ts";
import { LotOrigin } from "./LotOrigin.tsx";
import { lotsNow } from "../state/lots-state.ts";
import { patternCode } from "./pattern-code.ts";
import { TreatmentFields } from "./TreatmentFields.tsx";
import { ValueField } from "../form/NumberField.tsx";
import * as texts from "./words.ts";

interface NewLotDialogProps {
  /** Null: it is asked for. */
  readonly varietyId: string | null;
  readonly onClose: () => void;
}

/** A lot put on the shelf. Its code is made by the plan's pattern and seen before it is kept. */
export function NewLotDialog({ varietyId, onClose }: NewLotDialogProps) {
  const { plan, book } = useKept();
  const typed = useNewLot(varietyId);
  const { lot, change, problem, setProblem } = typed;
  const variety = plan.varieties.find(({ id }) => id === lot.variety);
  const kind = variety && book.kind(variety.kind);
  const made = useMemo(
    () => (variety ? patternCode(plan, variety, kind, lot) : ""),
    [plan, variety, kind, lot],
  );
  const code = lot.code === "" ? made : lot.code;
  const keep = (isAnother: boolean) => {
    const whole = { ...lot, code };
    const refusal = lot.variety === "" ? texts.chooseVariety : lotRefusal(plan, whole);
    setProblem(refusal);
    if (refusal !== null) return;
    commit(addLots([whole]));
    if (isAnother) {
      typed.again();
      windowNow().announce(texts.addedNext(code));
      return;
    }
    lotsNow().openLot(whole.id);
    if (viewNow().view !== "lots") viewNow().showView("lots");
    onClose();
  };
  const choices = useMemo(() => varietyChoices(plan), [plan]);
  return (
    <Dialog title={texts.addLotSeed} onClose={onClose} isWide>
      <form className="fields" noValidate onSubmit={onFormSubmit(() => keep(false))}>
        <ChoiceField
          label={texts.variety}
          value={lot.variety}
          choices={choices}
          onPick={(picked) => void change({ variety: picked })}
        />
        <NewLotFields lot={lot} kind={kind} plan={plan} onChange={change} />
        <TextField
          label={texts.codeField}
          value={code}
          hint={lot.code === "" ? texts.madePatternTypeAnother : undefined}
          onApply={(text) => change({ code: text.trim() === made ? "" : text.trim() })}
        />
        <CodePatternField />
        <FormProblem problem={problem} />
        <p className="dialog-actions">
          <button type="submit" className="primary">
            {texts.addTheLot}
          </button>
          <button type="button" onClick={() => keep(true)}>
            {texts.addTypeNext}
          </button>
        </p>
      </form>
    </Dialog>
  );
}

interface NewLotFieldsProps extends PlaceFieldProps {
  readonly kind: Kind | undefined;
}

function NewLotFields({ lot, kind, plan, onChange: change }: NewLotFieldsProps) {
  return (
    <>
      <ValueField
        label={texts.harvestYear}
        value={lot.harvestYear}
        onApply={(harvestYear) => change({ harvestYear })}
      />
      <LotOrigin lot={lot} onChange={change} />
      <TextField
        label={texts.amountField}
        value={amountText(lot.amount)}
        placeholder={texts.suchAsGrams}
        hint={otherAmountWords(lot, kind)}
        onApply={(text) => {
          const read = readAmount(text);
          return read.ok ? change({ amount: read.amount }) : read.reason;
        }}
      />
      <TreatmentFields lot={lot} onChange={change} />
      <PlaceField lot={lot} plan={plan} onChange={change} />
    </>
  );
}

/** The lot as it is typed; an empty code is the one the pattern makes. */
function useNewLot(varietyId: string | null) {
  const blank = (variety: string): Lot => ({
    id: nextLotId(planNow().plan),
    code: "",
    variety,
    state: "in stock",
  });
  const [lot, setLot] = useState<Lot>(() => blank(varietyId ?? ""));
  const [problem, setProblem] = useState<string | null>(null);
  const change = (changes: LotChanges) => {
    setProblem(null);
    setLot((before) => patched<Lot>(before, changes));
    return null;
  };
  const again = () => setLot(({ variety }) => blank(variety));
  return { lot, change, problem, setProblem, again };
}

function varietyChoices(plan: Plan) {
  return [
    { value: "", label: texts.choose },
    ...plan.varieties.map(({ id, name }) => ({ value: id, label: name })),
  ];
}

interface PlaceFieldProps {
  readonly lot: Lot;
  readonly plan: Plan;
  readonly onChange: (changes: LotChanges) => null;
}

function PlaceField({ lot, plan, onChange }: PlaceFieldProps) {
  if (plan.storagePlaces.length === 0) return null;
  return (
    <ChoiceField
      label={texts.keptIn}
      value={lot.stored?.[0]?.place ?? ""}
      choices={[
        { value: "", label: texts.notKnown },
        ...plan.storagePlaces.map(({ id, name }) => ({ value: id, label: name })),
      ]}
      onPick={(place) => void onChange({ stored: place === "" ? undefined : [{ place }] })}
    />
  );
}
