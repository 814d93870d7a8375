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
import * as texts from "./words.ts";
import "./kinds.css";

interface OwnKindPartProps {
  readonly own: OwnKind;
  readonly onChange: ChangeOwnKind;
}

/** The grower's own numbers; what stays empty is as the built-in kind has it, or not known. */
export function OwnKindFigures({ own, onChange }: OwnKindPartProps) {
  return (
    <>
      <h3 className="field-part">{texts.isolationDistance}</h3>
      {levels.map((level) => (
        <LengthField
          key={level}
          label={texts.atLevel(level)}
          value={own.isolationM[level]}
          placeholder={cropBook().kind(own.id) ? texts.asPublished : texts.notKnown}
          onApply={(metres) => onChange({ isolationM: { ...own.isolationM, [level]: metres } })}
          onClear={() => {
            const { [level]: _gone, ...rest } = own.isolationM;
            onChange({ isolationM: rest });
          }}
        />
      ))}
      <TextField
        label={texts.source}
        value={own.source ?? ""}
        placeholder={texts.bookNeighbourOwnTrials}
        isWide
        onApply={(typed) =>
          nameProblem(typed, { tooLong: texts.sourceTooLong }) ??
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
      <h3 className="field-part">{texts.timeInDays}</h3>
      <RangeField
        label={texts.fromSowingToFlower}
        value={own.sownToFlower}
        usual={usual?.sownToFlower?.value}
        onApply={(sownToFlower) => onChange({ sownToFlower })}
      />
      <RangeField
        label={texts.settingOutFlower}
        value={own.transplantedToFlower}
        usual={usual?.transplantedToFlower?.value}
        onApply={(transplantedToFlower) => onChange({ transplantedToFlower })}
      />
      <RangeField
        label={texts.inFlower}
        value={own.bloomDays}
        usual={usual?.bloomDays?.value}
        onApply={(bloomDays) => onChange({ bloomDays })}
      />
      <RangeField
        label={texts.flowerRipeSeed}
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
    metres === undefined ? texts.notKnown : formatLength(metres, units);
  return (
    <>
      <h3 className="field-part">{texts.plants}</h3>
      <LengthField
        label={texts.spacingInTheRow}
        value={own.inRowM}
        placeholder={shown(usual?.spacing?.inRowM.value)}
        isSize
        onApply={(inRowM) => onChange({ inRowM })}
        onClear={() => onChange({ inRowM: undefined })}
        hint={texts.bothSpacingsNeededNumber}
      />
      <LengthField
        label={texts.spacingBetweenRows}
        value={own.betweenRowsM}
        placeholder={shown(usual?.spacing?.betweenRowsM.value)}
        isSize
        onApply={(betweenRowsM) => onChange({ betweenRowsM })}
        onClear={() => onChange({ betweenRowsM: undefined })}
      />
      <CountField
        label={texts.seedPlantsNeeded}
        value={own.plantsNeeded}
        onApply={(plantsNeeded) => {
          onChange({ plantsNeeded });
        }}
      />
    </>
  );
}
