import { useId } from "react";
import { patched } from "../../core/edits/edit.ts";
import type { Planting, StatedAdjustment } from "../../core/model/plan.ts";
import { CountField } from "../form/NumberField.tsx";
import { TextField } from "../form/TextField.tsx";
import {
  type AdjustmentChoice,
  type FigureInForce,
  adjustmentChoices,
  strayAdjustments,
  withAdjustment,
} from "./adjustment-choices.ts";
import { fieldAreaText, readFieldArea } from "./field-area.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./dialog-words.ts";
import "./particulars.css";
import * as steps from "./step-words.ts";

interface AdjustmentFieldsProps {
  readonly planting: Planting;
  readonly kindId: string;
  /** Whether a distance is typed, which stands whatever is stated here. */
  readonly isTyped: boolean;
  /** What its distance rests on where none is typed. */
  readonly figure: FigureInForce;
  readonly onChange: (adjustments: Planting["adjustments"], title: string) => void;
}

/** Changes to the distance that regulations give the kind; each the grower's own statement. */
export function AdjustmentFields({
  planting,
  kindId,
  isTyped,
  figure,
  onChange,
}: AdjustmentFieldsProps) {
  const stated = planting.adjustments ?? [];
  const choices = adjustmentChoices(kindId, stated, figure);
  const strays = strayAdjustments(kindId, stated);
  if (choices.length === 0 && strays.length === 0) return null;
  const set = (id: string, entry: StatedAdjustment | null) =>
    onChange(withAdjustment(stated, id, entry), steps.changeWhatHolds(planting.code));
  return (
    <fieldset className="field-group adjustments">
      <legend>{texts.regulationsHeading}</legend>
      <p className="field-hint">
        {texts.tickHint}
        {isTyped && ` ${texts.distanceIsTyped}`}
      </p>
      {choices.map((choice) => (
        <AdjustmentField
          key={choice.id}
          choice={isTyped ? { ...choice, whyIdle: null } : choice}
          onSet={(entry) => set(choice.id, entry)}
        />
      ))}
      {strays.map(({ id }) => (
        <p key={id} className="field-hint">
          {texts.recordedNotOffered(id)}{" "}
          <button type="button" className="act" onClick={() => set(id, null)}>
            {texts.deleteWord}
          </button>
        </p>
      ))}
    </fieldset>
  );
}

interface AdjustmentFieldProps {
  readonly choice: AdjustmentChoice;
  readonly onSet: (entry: StatedAdjustment | null) => void;
}

function AdjustmentField({ choice, onSet }: AdjustmentFieldProps) {
  const { units } = useShownPlan();
  const id = useId();
  const { stated, asks } = choice;
  return (
    <div className="adjustment">
      <label className="check-field">
        <input
          type="checkbox"
          checked={stated !== null}
          aria-describedby={id}
          onChange={(event) => onSet(event.target.checked ? { id: choice.id } : null)}
        />
        {choice.condition}
      </label>
      <p className="field-hint" id={id}>
        {choice.effect}
        {choice.whyIdle !== null && (
          <>
            . <strong>{choice.whyIdle}</strong>
          </>
        )}
      </p>
      {stated && asks.includes("borderRows") && (
        <CountField
          label={texts.borderRows}
          value={stated.borderRows}
          onApply={(borderRows) => onSet(patched(stated, { borderRows }))}
        />
      )}
      {stated && asks.includes("fieldHa") && (
        <TextField
          label={texts.sizeOfTheField}
          value={stated.fieldHa === undefined ? "" : fieldAreaText(stated.fieldHa, units)}
          placeholder={texts.small}
          onApply={(text) => {
            if (text.trim() === "") {
              onSet(patched(stated, { fieldHa: undefined }));
              return null;
            }
            const read = readFieldArea(text, units);
            if (!read.ok) return read.reason;
            onSet(patched(stated, { fieldHa: read.hectares }));
            return null;
          }}
        />
      )}
    </div>
  );
}
