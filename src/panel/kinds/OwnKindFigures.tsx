import { cropBook } from "../../core/kinds/crop-book.ts";
import { formatLength } from "../../core/model/length.ts";
import type { OwnKind } from "../../core/model/plan.ts";
import { levels } from "../../core/model/planting-schema.ts";
import { LengthField } from "../form/LengthField.tsx";
import { CountField } from "../form/NumberField.tsx";
import { RangeField } from "../form/RangeField.tsx";
import { TextField } from "../form/TextField.tsx";
import { nameProblem } from "../form/name-problem.ts";
import type { ChangeOwnKind } from "./own-kind-edit.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import "./kinds.css";

interface OwnKindPartProps {
  readonly own: OwnKind;
  readonly onChange: ChangeOwnKind;
}

/** The grower's own numbers; what stays empty is as the built-in kind has it, or not known. */
export function OwnKindFigures({ own, onChange }: OwnKindPartProps) {
  return (
    <>
      <h3 className="field-part">Isolation distance</h3>
      {levels.map((level) => (
        <LengthField
          key={level}
          label={`At ${level} level`}
          value={own.isolationM[level]}
          placeholder={cropBook().kind(own.id) ? "as published" : "not known"}
          onApply={(metres) => onChange({ isolationM: { ...own.isolationM, [level]: metres } })}
          onClear={() => {
            const { [level]: _gone, ...rest } = own.isolationM;
            onChange({ isolationM: rest });
          }}
        />
      ))}
      <TextField
        label="Source"
        value={own.source ?? ""}
        placeholder="a book, a neighbour, own trials"
        isWide
        onApply={(typed) =>
          nameProblem(typed, { what: "A source has" }) ??
          onChange({ source: typed.trim() === "" ? undefined : typed.trim() })
        }
      />
      <OwnKindTimes own={own} onChange={onChange} />
      <OwnKindPlants own={own} onChange={onChange} />
    </>
  );
}

function OwnKindTimes({ own, onChange }: OwnKindPartProps) {
  const usual = cropBook().kind(own.id)?.timing;
  return (
    <>
      <h3 className="field-part">Time, in days</h3>
      <RangeField
        label="From sowing to flower"
        value={own.sownToFlower}
        usual={usual?.sownToFlower?.value}
        onApply={(sownToFlower) => onChange({ sownToFlower })}
      />
      <RangeField
        label="From setting out to flower"
        value={own.transplantedToFlower}
        usual={usual?.transplantedToFlower?.value}
        onApply={(transplantedToFlower) => onChange({ transplantedToFlower })}
      />
      <RangeField
        label="In flower"
        value={own.bloomDays}
        usual={usual?.bloomDays?.value}
        onApply={(bloomDays) => onChange({ bloomDays })}
      />
      <RangeField
        label="From flower to ripe seed"
        value={own.flowerToSeed}
        usual={usual?.flowerToSeed?.value}
        onApply={(flowerToSeed) => onChange({ flowerToSeed })}
      />
    </>
  );
}

function OwnKindPlants({ own, onChange }: OwnKindPartProps) {
  const { units } = useShownPlan();
  const usual = cropBook().kind(own.id);
  const shown = (metres: number | undefined) =>
    metres === undefined ? "not known" : formatLength(metres, units);
  return (
    <>
      <h3 className="field-part">Plants</h3>
      <LengthField
        label="Spacing in the row"
        value={own.inRowM}
        placeholder={shown(usual?.spacing?.inRowM.value)}
        isSize
        onApply={(inRowM) => onChange({ inRowM })}
        onClear={() => onChange({ inRowM: undefined })}
        hint="Both spacings are needed for the number of plants."
      />
      <LengthField
        label="Spacing between rows"
        value={own.betweenRowsM}
        placeholder={shown(usual?.spacing?.betweenRowsM.value)}
        isSize
        onApply={(betweenRowsM) => onChange({ betweenRowsM })}
        onClear={() => onChange({ betweenRowsM: undefined })}
      />
      <CountField
        label="Seed plants needed"
        value={own.plantsNeeded}
        onApply={(plantsNeeded) => {
          onChange({ plantsNeeded });
        }}
      />
    </>
  );
}
