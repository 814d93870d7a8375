import type { Lot } from "../../core/model/plan.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { TextField } from "../form/TextField.tsx";
import type { LotChanges } from "./lot-change.ts";
import * as texts from "./words.ts";

const treatments = [
  { value: "unknown", label: texts.notKnown },
  { value: "no", label: texts.untreated },
  { value: "yes", label: texts.treated },
] as const;

interface TreatmentFieldsProps {
  readonly lot: Pick<Lot, "treated" | "treatedWith">;
  readonly onChange: (changes: LotChanges, title: (code: string) => string) => string | null;
}

/** Whether seed is treated and with what, with the caution that goes with it. */
export function TreatmentFields({ lot, onChange }: TreatmentFieldsProps) {
  const value = lot.treated === undefined ? "unknown" : lot.treated ? "yes" : "no";
  return (
    <>
      <ChoiceField
        label={texts.treatment}
        value={value}
        choices={treatments}
        onPick={(picked) =>
          void onChange(
            picked === "yes"
              ? { treated: true }
              : { treated: picked === "no" ? false : undefined, treatedWith: undefined },
            texts.changeTreatment,
          )
        }
      />
      {lot.treated === true && (
        <>
          <TextField
            label={texts.treatedWith}
            value={lot.treatedWith ?? ""}
            isWide
            onApply={(text) =>
              onChange(
                { treatedWith: text.trim() === "" ? undefined : text.trim() },
                texts.changeTreatment,
              )
            }
          />
          <p className="caution-text">{texts.treatedSeedPoisonPeople}</p>
        </>
      )}
    </>
  );
}
