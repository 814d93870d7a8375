import { useState } from "react";
import type { LabelChoice } from "../../core/labels/label-pages.ts";
import { OWN_SIZE_EXAMPLE, labelSizes, ownLabelSize } from "../../core/labels/label-sizes.ts";
import { CheckField, ChoiceField } from "../form/ChoiceField.tsx";
import { TextField } from "../form/TextField.tsx";

const OWN = "own";

interface FilesLabelFieldsProps {
  readonly choice: LabelChoice;
  readonly onSet: (choice: LabelChoice) => void;
}

/** Which labels are printed on, from which one on, and what else stands on them. */
export function FilesLabelFields({ choice, onSet }: FilesLabelFieldsProps) {
  const [isOwn, setOwn] = useState(false);
  const [own, setOwnText] = useState(OWN_SIZE_EXAMPLE);
  const applyOwn = (text: string) => {
    const size = ownLabelSize(text);
    if (!size) return `Labels that fit their page, as in ${OWN_SIZE_EXAMPLE}`;
    setOwnText(text);
    onSet({ ...choice, size });
    return null;
  };
  return (
    <>
      <ChoiceField
        label="Labels"
        value={isOwn ? OWN : choice.size.id}
        choices={[
          ...labelSizes.map(({ id, title }) => ({ value: id, label: title })),
          { value: OWN, label: "measured by hand" },
        ]}
        onPick={(id) => {
          const size = labelSizes.find((each) => each.id === id) ?? ownLabelSize(own);
          setOwn(id === OWN);
          if (size) onSet({ ...choice, size });
        }}
        hint="Our own sizes. Measure bought sheets; print one on plain paper first."
      />
      {isOwn && (
        <TextField
          label="Page, label, columns x rows, first edge, pitch; mm"
          value={own}
          onApply={applyOwn}
        />
      )}
      <TextField
        label="First label to print on"
        value={String(choice.startAt)}
        onApply={(text) => {
          if (!/^[1-9]\d{0,3}$/.test(text.trim())) return "A whole number from 1";
          onSet({ ...choice, startAt: Number(text) });
          return null;
        }}
      />
      <TextField
        label="Seed treated with"
        value={choice.treatment}
        onApply={(text) => {
          onSet({ ...choice, treatment: text.trim().slice(0, 120) });
          return null;
        }}
      />
      <CheckField
        label="With a code read by machine (QR)"
        isOn={choice.hasQr}
        onSet={(hasQr) => onSet({ ...choice, hasQr })}
      />
    </>
  );
}
