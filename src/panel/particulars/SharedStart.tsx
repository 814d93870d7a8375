import { useMemo, useState } from "react";
import { usualStart } from "../../core/beds/usual-start.ts";
import type { Edit } from "../../core/edits/edit.ts";
import { changePlantings } from "../../core/edits/object-edits.ts";
import type { DayNumber } from "../../core/model/day.ts";
import type { Planting } from "../../core/model/plan.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { DayField } from "../form/DayField.tsx";
import { commit, useKept } from "../state/plan-actions.ts";
import { choicesOf } from "../state/plan-words.ts";
import { counted, sharedValue } from "../state/selected-objects.ts";
import * as texts from "./dialog-words.ts";
import { sharedStartWords as words } from "./shared-start-words.ts";

type Start = NonNullable<Planting["start"]>;

interface SharedStartProps {
  readonly plantings: readonly Planting[];
  /** How many they are, in words. */
  readonly what: string;
}

/** How and when several start: one way, one day, or each as its kind usually does. */
export function SharedStart({ plantings, what }: SharedStartProps) {
  const { layout } = useKept();
  const [picked, setPicked] = useState<Start["method"] | null>(null);
  const usual = useUsualStarts(plantings);
  const date = sharedValue(plantings, (planting) => planting.start?.date);
  const method = sharedValue(plantings, (planting) => planting.start?.method)?.value;
  const keep = (startOf: (planting: Planting) => Planting["start"], title: string) => {
    const edits = plantings.flatMap((planting) => {
      const start = startOf(planting);
      return start === planting.start
        ? []
        : [changePlantings(layout.id, [planting.id], { start }, "")];
    });
    if (edits.length > 0) commit(inOneStep(title, edits));
  };
  const pickMethod = (next: Start["method"]) => {
    setPicked(next);
    // What has no day yet takes the way along with it.
    keep(({ start }) => start && { ...start, method: next }, words.setMethod(what));
  };
  const setDay = (day: DayNumber | undefined) => {
    keep(({ id, start }) => {
      if (day === undefined) return undefined;
      const how = picked ?? start?.method ?? usual.get(id)?.method ?? "sown";
      return { ...start, method: how, date: day };
    }, words.setStart(what));
    return null;
  };
  return (
    <>
      <ChoiceField
        label={words.method}
        value={picked ?? method ?? null}
        choices={choicesOf(words.methods)}
        onPick={pickMethod}
      />
      <DayField
        label={texts.start}
        value={date?.value}
        {...(date ? {} : { placeholder: texts.differs })}
        onApply={setDay}
      />
      {usual.size > 0 && (
        <p>
          <button
            type="button"
            onClick={() => keep(({ id, start }) => usual.get(id) ?? start, words.setUsual(what))}
          >
            {words.usual}
          </button>
          <span className="field-hint">
            {" "}
            {words.usualHint(counted(usual.size, ...words.known))}
          </span>
        </p>
      )}
    </>
  );
}

/** The usual starts by planting, of those whose kind has one. */
function useUsualStarts(plantings: readonly Planting[]): ReadonlyMap<string, Start> {
  const { plan, layout, book } = useKept();
  return useMemo(() => {
    const kindOf = new Map(plan.varieties.map(({ id, kind }) => [id, kind]));
    const bare = { ...layout, plantings: [] };
    // Once for each kind: hundreds of plantings are of a few.
    const starts = new Map<string, Start | null>();
    const startOf = (kindId: string) => {
      const known = starts.get(kindId);
      if (known !== undefined) return known;
      const kind = book.kind(kindId);
      const start = (kind && usualStart(plan, bare, kind)) ?? null;
      starts.set(kindId, start);
      return start;
    };
    const entries = plantings.flatMap(({ id, variety }): readonly (readonly [string, Start])[] => {
      const start = startOf(kindOf.get(variety) ?? "");
      return start ? [[id, start]] : [];
    });
    return new Map(entries);
  }, [plan, layout, book, plantings]);
}

/** One undo step made of several edits. */
function inOneStep(title: string, edits: readonly Edit[]): Edit {
  return { title, apply: (plan) => edits.reduce((before, edit) => edit.apply(before), plan) };
}
