import { useState } from "react";
import { type AlongBed, alongBedOf, onOtherBed } from "../../core/beds/bed-stretch.ts";
import { setOutline } from "../../core/edits/move-objects.ts";
import { freeStretches } from "../../core/beds/place-planting.ts";
import { formatLength } from "../../core/model/length.ts";
import type { Bed, Planting } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { StretchFields } from "./StretchFields.tsx";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { commit } from "../state/plan-actions.ts";
import * as texts from "./dialog-words.ts";
import * as steps from "./step-words.ts";

/** The bed a planting stands in, to be changed, and where along it the planting lies. */
export function BedOfPlanting({ planting }: { readonly planting: Planting }) {
  const layout = useShownLayout();
  const plan = useShownPlan();
  const book = usePlanStore((state) => state.book);
  const [refusal, setRefusal] = useState<string | null>(null);
  const present = layout.beds.find(({ id }) => id === planting.bed);
  const along: AlongBed | null = alongBedOf(planting, layout.beds);
  const kindId = plan.varieties.find(({ id }) => id === planting.variety)?.kind ?? "";

  const moveTo = (bed: Bed) => {
    if (bed.id === planting.bed) return;
    const found = onOtherBed(layout, planting, bed, book.kind(kindId));
    if (!found.ok) {
      const needed = formatLength(found.neededM, plan.units);
      const longest = formatLength(found.longestM, plan.units);
      setRefusal(
        found.longestM === 0
          ? texts.bedIsFull(bed.code)
          : texts.bedHasLess(bed.code, longest, planting.code, needed),
      );
      return;
    }
    setRefusal(null);
    commit(
      setOutline(layout.id, planting.id, found.outline, steps.moveToBed(planting.code, bed.code)),
    );
  };
  const freeWords = (bed: Bed) => {
    if (bed.outline.shape !== "rectangle" || bed.id === planting.bed) return bed.code;
    const free = freeStretches(layout, bed, planting.id).reduce(
      (sum, { fromM, toM }) => sum + toM - fromM,
      0,
    );
    return free === 0
      ? texts.bedFull(bed.code)
      : texts.bedFree(bed.code, formatLength(free, plan.units));
  };
  const choices = layout.beds.map((bed) => ({ value: bed.id, label: freeWords(bed) }));
  if (choices.length === 0) return null;
  return (
    <>
      <ChoiceField
        label={texts.bed}
        value={present?.id ?? ""}
        choices={present ? choices : [{ value: "", label: texts.inNoBed }, ...choices]}
        onPick={(id) => {
          const bed = layout.beds.find((entry) => entry.id === id);
          if (bed) moveTo(bed);
        }}
      />
      {refusal !== null && (
        <p className="field-reason" role="alert">
          {refusal}
        </p>
      )}
      {present && along && <StretchFields planting={planting} bed={present} along={along} />}
    </>
  );
}
