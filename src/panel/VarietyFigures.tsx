import type { Range } from "../core/crops/crop.ts";
import type { Variety } from "../core/model/plan.ts";
import { usePlanStore } from "../store/plan-store.ts";
import { ChoiceField } from "./ChoiceField.tsx";
import { LengthField } from "./LengthField.tsx";
import { TextField } from "./TextField.tsx";
import { rangeText, readRange } from "./range-text.ts";
import { requirementWords } from "./requirement-words.ts";
import { useShownPlan } from "./use-shown-plan.ts";
import { varietyRequirement } from "./variety-edit.ts";

interface VarietyFiguresProps {
  readonly variety: Variety;
  readonly onChange: (
    changes: Partial<{ [Key in keyof Variety]: Variety[Key] | undefined }>,
  ) => null;
}

/** What the variety has of its own, beside what its kind gives. */
export function VarietyFigures({ variety, onChange }: VarietyFiguresProps) {
  const plan = useShownPlan();
  const book = usePlanStore((state) => state.book);
  const kind = book.kind(variety.kind);
  if (!kind) return null;
  const forms = kind.forms ?? [];
  const { timing } = kind;
  const { isolationM: _own, ...asPublished } = variety;
  const published = varietyRequirement(plan, asPublished, book);
  return (
    <>
      {forms.length > 0 && (
        <ChoiceField
          label="Flower form"
          value={variety.form ?? forms[0]?.id ?? null}
          choices={forms.map(({ id, name }) => ({ value: id, label: name }))}
          onPick={(form) => onChange({ form })}
        />
      )}
      <LengthField
        label="Own isolation distance"
        value={variety.isolationM}
        placeholder="as published"
        onApply={(isolationM) => onChange({ isolationM })}
        onClear={() => onChange({ isolationM: undefined })}
        hint={`Published for ${plan.level} level: ${requirementWords(published, plan.units)}`}
      />
      <RangeField
        label="Days from sowing to flower"
        value={variety.sownToFlower}
        usual={timing.sownToFlower?.value}
        onApply={(sownToFlower) => onChange({ sownToFlower })}
      />
      <RangeField
        label="Days from setting out to flower"
        value={variety.transplantedToFlower}
        usual={timing.transplantedToFlower?.value}
        onApply={(transplantedToFlower) => onChange({ transplantedToFlower })}
      />
      <RangeField
        label="Days in flower"
        value={variety.bloomDays}
        usual={timing.bloomDays?.value}
        onApply={(bloomDays) => onChange({ bloomDays })}
      />
    </>
  );
}

interface RangeFieldProps {
  readonly label: string;
  readonly value: Range | undefined;
  /** The kind's own range. */
  readonly usual: Range | undefined;
  readonly onApply: (range: Range | undefined) => void;
}

function RangeField({ label, value, usual, onApply }: RangeFieldProps) {
  const apply = (text: string) => {
    if (text.trim() === "") {
      onApply(undefined);
      return null;
    }
    const read = readRange(text);
    if (!read.ok) return read.reason;
    onApply(read.value);
    return null;
  };
  return (
    <TextField
      label={label}
      value={value === undefined ? "" : rangeText(value)}
      placeholder={usual === undefined ? "not known" : rangeText(usual)}
      isNumeric
      onApply={apply}
    />
  );
}
