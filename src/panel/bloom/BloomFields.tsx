import { useState } from "react";
import type { changePlantings } from "../../core/edits/object-edits.ts";
import type { Planting } from "../../core/model/plan.ts";
import { BloomOutlook } from "./BloomOutlook.tsx";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { DayField } from "../form/DayField.tsx";
import { WindowField } from "../form/WindowField.tsx";
import { choicesOf, floweringWords } from "../state/plan-words.ts";
import { useShownResult } from "../state/use-shown-plan.ts";
import * as texts from "./words.ts";

type StartMethod = NonNullable<Planting["start"]>["method"];

const startWords: Readonly<Record<StartMethod, string>> = {
  sown: texts.sownInPlace,
  transplanted: texts.setOut,
};

interface BloomFieldsProps {
  readonly planting: Planting;
  readonly onChange: (changes: Parameters<typeof changePlantings>[2], title: string) => void;
}

/** Start and bloom of one planting, typed or predicted. */
export function BloomFields({ planting, onChange }: BloomFieldsProps) {
  const stand = useShownResult().standById.get(planting.id);
  const timing = stand?.kind.timing;
  const usual = timing?.transplantedToFlower && !timing.sownToFlower ? "transplanted" : "sown";
  const [picked, setPicked] = useState<StartMethod>(usual);
  const { code, start } = planting;
  const method = start?.method ?? picked;
  const pickMethod = (next: StartMethod) => {
    setPicked(next);
    if (start) onChange({ start: { ...start, method: next } }, texts.changeStart(code));
  };
  return (
    <>
      <ChoiceField
        label={texts.start}
        value={method}
        choices={choicesOf(startWords)}
        onPick={pickMethod}
      />
      <DayField
        label={texts.on}
        value={start?.date}
        onApply={(date) => {
          const next = date === undefined ? undefined : { ...start, method, date };
          onChange({ start: next }, texts.setStart(code));
          return null;
        }}
      />
      <ChoiceField
        label={texts.flowering}
        value={planting.flowering}
        choices={choicesOf(floweringWords)}
        onPick={(flowering) => onChange({ flowering }, texts.changeFlowering(code))}
      />
      {stand?.shedsPollen === true && <BloomOutlook stand={stand} />}
      <WindowField
        label={texts.ownBloomDates}
        value={planting.bloom}
        onApply={(bloom) => onChange({ bloom }, texts.setBloom(code))}
      />
    </>
  );
}
