import { useMemo } from "react";
import type { Kind } from "../../core/kinds/crop.ts";
import { longDate } from "../../core/model/day.ts";
import type { Lot } from "../../core/model/plan.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { NoteField, TextField } from "../form/TextField.tsx";
import { useKept } from "../state/plan-actions.ts";
import { amountText, otherAmountWords, readAmount } from "../../core/lots/amount-text.ts";
import { moveLotsDialog } from "./dialogs.ts";
import { type LotChanges, changeLot } from "./lot-change.ts";
import { CrossingField } from "./CrossingField.tsx";
import { GrownFromField } from "./GrownFromField.tsx";
import { LotOrigin } from "./LotOrigin.tsx";
import { TreatmentFields } from "./TreatmentFields.tsx";
import { ValueField } from "../form/NumberField.tsx";
import * as texts from "./words.ts";

interface LotFieldsProps {
  readonly lot: Lot;
  readonly kind: Kind | undefined;
}

/** Every field of one lot; each is kept as it is left. */
export function LotFields({ lot, kind }: LotFieldsProps) {
  const { plan } = useKept();
  const change = (changes: LotChanges, title: (code: string) => string) =>
    changeLot(lot, changes, title(lot.code));
  const varieties = useMemo(
    () => plan.varieties.map(({ id, name }) => ({ value: id, label: name })),
    [plan.varieties],
  );
  return (
    <>
      <TextField
        label={texts.codeField}
        value={lot.code}
        onApply={(text) => change({ code: text.trim() }, texts.changeCode)}
      />
      <ChoiceField
        label={texts.variety}
        value={lot.variety}
        choices={varieties}
        onPick={(variety) => void change({ variety }, texts.changeVariety)}
      />
      <ValueField
        label={texts.harvestYear}
        value={lot.harvestYear}
        onApply={(harvestYear) => change({ harvestYear }, texts.changeHarvestYear)}
      />
      <AmountFields lot={lot} kind={kind} onChange={change} />
      <LotOrigin
        lot={lot}
        onChange={change}
        parents={<GrownFromField lot={lot} onChange={change} />}
      />
      <StorageFields lot={lot} />
      <TreatmentFields lot={lot} onChange={change} />
      <CrossingField lot={lot} onChange={change} />
      <NoteField
        label={texts.note}
        value={lot.note ?? ""}
        onApply={(text) => void change({ note: text === "" ? undefined : text }, texts.noteOn)}
      />
    </>
  );
}

type OnChange = (changes: LotChanges, title: (code: string) => string) => string | null;

function AmountFields({ lot, kind, onChange }: LotFieldsProps & { readonly onChange: OnChange }) {
  return (
    <>
      <TextField
        label={texts.amountField}
        value={amountText(lot.amount)}
        placeholder={texts.suchAsGrams}
        hint={otherAmountWords(lot, kind)}
        onApply={(text) => {
          const read = readAmount(text);
          return read.ok ? onChange({ amount: read.amount }, texts.changeAmount) : read.reason;
        }}
      />
      <ValueField
        label={texts.seedsInAGram}
        value={lot.seedsPerGram}
        placeholder={kind?.seedsPerGram ? texts.kind(kind.seedsPerGram.value) : texts.notKnown}
        onApply={(seedsPerGram) => onChange({ seedsPerGram }, texts.changeSeedsPerGram)}
      />
    </>
  );
}

type Stay = NonNullable<Lot["stored"]>[number];

/** The day since when it lies there; null where none is known. */
function dayOf({ from }: Stay): string | null {
  return from === undefined ? null : longDate(from);
}

function StorageFields({ lot }: { readonly lot: Lot }) {
  const { plan } = useKept();
  const names = new Map(plan.storagePlaces.map(({ id, name }) => [id, name]));
  const nameOf = ({ place }: Stay) => names.get(place) ?? "?";
  const stays = lot.stored ?? [];
  const now = stays.at(-1);
  const set = (moisturePct: number | undefined) => {
    if (!now) return texts.choosePlaceFirst;
    const { moisturePct: _old, ...rest } = now;
    const last = moisturePct === undefined ? rest : { ...rest, moisturePct };
    return changeLot(
      lot,
      { stored: [...stays.slice(0, -1), last] },
      texts.changeMoisture(lot.code),
    );
  };
  return (
    <>
      <div className="field">
        <span className="field-name">{texts.kept}</span>
        <div className="field-control">
          <span>{now ? texts.placeSince(nameOf(now), dayOf(now)) : texts.placeNotKnown}</span>
          <button
            type="button"
            className="act"
            onClick={() => moveLotsDialog.open({ ids: [lot.id] })}
          >
            {texts.move}
          </button>
          {stays.length > 1 && (
            <p className="field-hint">
              {texts.before(
                stays
                  .slice(0, -1)
                  .map((stay) => texts.placeFrom(nameOf(stay), dayOf(stay)))
                  .join(", "),
              )}
            </p>
          )}
        </div>
      </div>
      {now && (
        <ValueField
          label={texts.sealedAtMoisture}
          value={now.moisturePct}
          placeholder={texts.notSealed}
          hint={texts.measuredFreshWeightGoes}
          onApply={set}
        />
      )}
    </>
  );
}
