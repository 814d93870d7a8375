import type { Variety } from "../../core/model/plan.ts";
import { levelNames } from "../../core/words/level-words.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { FigureChoice } from "./FigureChoice.tsx";
import { HeatFields } from "./HeatFields.tsx";
import { LengthField } from "../form/LengthField.tsx";
import { RangeField } from "../form/RangeField.tsx";
import { requirementWords, varietyRequirement } from "../state/requirement-words.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./dialog-words.ts";

interface VarietyFiguresProps {
  readonly variety: Variety;
  readonly onChange: (
    changes: Partial<{ [Key in keyof Variety]: Variety[Key] | undefined }>,
  ) => null;
  /** Opens all figures of the kind. */
  readonly onRead: () => void;
}

/** What the variety has of its own, beside what its kind gives. */
export function VarietyFigures({ variety, onChange, onRead }: VarietyFiguresProps) {
  const plan = useShownPlan();
  const book = usePlanStore((state) => state.book);
  const kind = book.kind(variety.kind);
  if (!kind) return null;
  const { timing } = kind;
  const { isolationM: _own, ...asPublished } = variety;
  const published = varietyRequirement(plan, asPublished, book);
  return (
    <>
      <FigureChoice
        kind={kind}
        variety={variety}
        onPick={(figure) => onChange({ figure })}
        onRead={onRead}
      />
      <LengthField
        label={texts.ownIsolationDistance}
        value={variety.isolationM}
        placeholder={texts.asPublished}
        onApply={(isolationM) => onChange({ isolationM })}
        onClear={() => onChange({ isolationM: undefined })}
        hint={texts.withoutOneAtLevel(
          levelNames[plan.level],
          requirementWords(published, plan.units),
        )}
      />
      <RangeField
        label={texts.daysSowingFlower}
        value={variety.sownToFlower}
        usual={timing.sownToFlower?.value}
        onApply={(sownToFlower) => onChange({ sownToFlower })}
      />
      <RangeField
        label={texts.daysSettingOutFlower}
        value={variety.transplantedToFlower}
        usual={timing.transplantedToFlower?.value}
        onApply={(transplantedToFlower) => onChange({ transplantedToFlower })}
      />
      <RangeField
        label={texts.daysInFlower}
        value={variety.bloomDays}
        usual={timing.bloomDays?.value}
        onApply={(bloomDays) => onChange({ bloomDays })}
      />
      <HeatFields
        value={variety.heatToFlower}
        usual={timing.heatToFlower?.value}
        unit={plan.units === "ft" ? "F" : "C"}
        hasClimate={plan.site.climate !== undefined}
        onApply={(heatToFlower) => onChange({ heatToFlower })}
      />
    </>
  );
}
