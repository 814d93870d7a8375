import { useState } from "react";
import type { HeatToFlower } from "../../core/kinds/crop.ts";
import {
  type TemperatureUnit,
  readTemperature,
  temperatureText,
} from "../../core/calendar/temperature-text.ts";
import { type HeatMethod, heatMethods } from "../../core/model/plan.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { TextField } from "../form/TextField.tsx";
import { heatSumText, heatWords, readHeatSum } from "../bloom/heat-text.ts";
import { temperatureUnits } from "../state/plan-words.ts";
import * as texts from "./dialog-words.ts";
import { heatMethods as heatMethodNames } from "../bloom/words.ts";

interface HeatFieldsProps {
  readonly value: HeatToFlower | undefined;
  /** The kind's own requirement, if one is known. */
  readonly usual: HeatToFlower | undefined;
  readonly unit: TemperatureUnit;
  readonly hasClimate: boolean;
  readonly onApply: (heat: HeatToFlower | undefined) => void;
}

/** Fields of a requirement; it counts once base and sum are there. */
type Pending = { readonly [Key in keyof HeatToFlower]?: HeatToFlower[Key] | undefined };

/** Heat from sowing to first flower. Method, base and cap belong to the sum and are never mixed. */
export function HeatFields(props: HeatFieldsProps) {
  const { value, usual, hasClimate, onApply } = props;
  const [unit, setUnit] = useState(props.unit);
  const [pending, setPending] = useState<Pending>(value ?? {});
  const [isOpen, setOpen] = useState(value !== undefined);
  const set = (changes: Pending) => {
    const next = { ...pending, ...changes };
    setPending(next);
    const { baseC, cDays, method = "simple average", capC = null } = next;
    const isWhole = baseC !== undefined && cDays !== undefined;
    onApply(isWhole ? { method, baseC, capC, cDays } : undefined);
    return null;
  };
  const toggle = () => {
    if (isOpen) onApply(undefined);
    // A sum of one's own is most often on the kind's scale.
    setPending(usual && !isOpen ? { ...usual, cDays: undefined } : {});
    setOpen(!isOpen);
  };
  const isHalf = isOpen && (pending.baseC === undefined || pending.cDays === undefined);
  return (
    <fieldset className="field-group">
      <legend>{texts.heatSowingFlower}</legend>
      <p className="field-hint">
        {usual ? texts.kind(heatWords(usual, unit)) : texts.noHeatKnownKind}{" "}
        {hasClimate ? texts.countedSitesClimateSown : texts.countedOnceSiteClimate}
      </p>
      {isOpen && <HeatNumbers pending={pending} unit={unit} onUnit={setUnit} onSet={set} />}
      {isHalf && <p className="field-hint">{texts.typeBaseDegreeDays}</p>}
      <p>
        <button type="button" onClick={toggle}>
          {isOpen ? texts.asTheKind : texts.giveOwnHeat}
        </button>
      </p>
    </fieldset>
  );
}

interface HeatNumbersProps {
  readonly pending: Pending;
  readonly unit: TemperatureUnit;
  readonly onUnit: (unit: TemperatureUnit) => void;
  readonly onSet: (changes: Pending) => null;
}

function HeatNumbers({ pending, unit, onUnit, onSet }: HeatNumbersProps) {
  const temperature = (text: string, apply: (celsius: number) => null) => {
    const celsius = readTemperature(text, unit);
    return celsius === null ? texts.typeDegrees(unit, unit === "F" ? 50 : 10) : apply(celsius);
  };
  const shown = (celsius: number | null | undefined) =>
    typeof celsius === "number" ? temperatureText(celsius, unit) : "";
  return (
    <>
      <ChoiceField label={texts.degrees} value={unit} choices={temperatureUnits} onPick={onUnit} />
      <ChoiceField<HeatMethod>
        label={texts.method}
        value={pending.method ?? "simple average"}
        choices={heatMethods.map((method) => ({ value: method, label: heatMethodNames[method] }))}
        onPick={(method) => onSet({ method })}
      />
      <TextField
        label={texts.base}
        value={shown(pending.baseC)}
        placeholder={unit === "F" ? "50" : "10"}
        isNumeric
        onApply={(text) => temperature(text, (baseC) => onSet({ baseC }))}
      />
      <TextField
        label={texts.cap}
        value={shown(pending.capC)}
        placeholder={texts.none}
        isNumeric
        onApply={(text) =>
          text.trim() === "" ? onSet({ capC: null }) : temperature(text, (capC) => onSet({ capC }))
        }
      />
      <TextField
        label={texts.days(unit)}
        value={pending.cDays ? heatSumText(pending.cDays, unit) : ""}
        placeholder={unit === "F" ? "1258-1398" : "699-777"}
        isNumeric
        onApply={(text) => {
          const read = readHeatSum(text, unit);
          return read.ok ? onSet({ cDays: read.value }) : read.reason;
        }}
      />
    </>
  );
}
