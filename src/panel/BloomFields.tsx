import { useState } from "react";
import type { Bloom } from "../core/calendar/bloom-window.ts";
import type { changePlantings } from "../core/edits/object-edits.ts";
import { shortDate } from "../core/model/day.ts";
import type { Planting } from "../core/model/plan.ts";
import { usePlanStore } from "../store/plan-store.ts";
import { ChoiceField } from "./ChoiceField.tsx";
import { DayField } from "./DayField.tsx";
import { WindowField } from "./WindowField.tsx";
import { choicesOf, floweringWords } from "./plan-words.ts";

type StartMethod = NonNullable<Planting["start"]>["method"];

const startWords: Readonly<Record<StartMethod, string>> = {
  sown: "sown in place",
  transplanted: "set out (plants, roots, bulbs)",
};

interface BloomFieldsProps {
  readonly planting: Planting;
  readonly onChange: (changes: Parameters<typeof changePlantings>[2], title: string) => void;
}

/** Start and bloom of one planting, typed or predicted. */
export function BloomFields({ planting, onChange }: BloomFieldsProps) {
  const stand = usePlanStore((state) => state.result.standById.get(planting.id));
  const timing = stand?.kind.timing;
  const usual = timing?.transplantedToFlower && !timing.sownToFlower ? "transplanted" : "sown";
  const [picked, setPicked] = useState<StartMethod>(usual);
  const { code, start } = planting;
  const method = start?.method ?? picked;
  const pickMethod = (next: StartMethod) => {
    setPicked(next);
    if (start) onChange({ start: { ...start, method: next } }, `Change start of ${code}`);
  };
  return (
    <>
      <ChoiceField
        label="Start"
        value={method}
        choices={choicesOf(startWords)}
        onPick={pickMethod}
      />
      <DayField
        label="On"
        value={start?.date}
        onApply={(date) => {
          const next = date === undefined ? undefined : { ...start, method, date };
          onChange({ start: next }, `Set start of ${code}`);
          return null;
        }}
      />
      <ChoiceField
        label="Flowering"
        value={planting.flowering}
        choices={choicesOf(floweringWords)}
        onPick={(flowering) => onChange({ flowering }, `Change flowering of ${code}`)}
      />
      {planting.flowering === "yes" && <PredictedBloom bloom={stand?.bloom ?? null} />}
      <WindowField
        label="Own bloom dates"
        value={planting.bloom}
        onApply={(bloom) => onChange({ bloom }, `Set bloom of ${code}`)}
      />
    </>
  );
}

/** First and last flower as the checks take them. */
function PredictedBloom({ bloom }: { readonly bloom: Bloom | null }) {
  if (bloom === null) {
    return <p className="field-hint">No bloom dates: type a start, or the bloom dates below.</p>;
  }
  const { likely, outer, basis } = bloom;
  const ways = { "own dates": "own dates", days: "counted in days", heat: "counted in heat" };
  const earliest =
    outer.first === likely.first ? "" : `, at the earliest ${shortDate(outer.first)}`;
  const latest = outer.last === likely.last ? "" : `, at the latest ${shortDate(outer.last)}`;
  return (
    <>
      <div className="field">
        <span className="field-name">First flower</span>
        <span className="field-value">
          {shortDate(likely.first)}
          {earliest}
        </span>
      </div>
      <div className="field">
        <span className="field-name">Last flower</span>
        <span className="field-value">
          {shortDate(likely.last)}
          {latest} ({ways[basis]})
        </span>
      </div>
    </>
  );
}
