import { patched } from "../../core/edits/edit.ts";
import { changePlan } from "../../core/edits/object-edits.ts";
import type { DayNumber } from "../../core/model/day.ts";
import type { Site } from "../../core/model/plan.ts";
import { DayField } from "../form/DayField.tsx";
import { commit } from "../state/plan-actions.ts";
import * as texts from "./words.ts";

/** The two frost dates: the grower's own, never worked out from normals. Each applies at once. */
export function FrostFields({ site }: { readonly site: Site }) {
  const set = (
    changes: { readonly [Key in "lastSpringFrost" | "firstAutumnFrost"]?: DayNumber | undefined },
    title: string,
  ) => {
    commit(changePlan({ site: patched<Site>(site, changes) }, title));
    return null;
  };
  return (
    <>
      <DayField
        label={texts.lastSpringFrost}
        value={site.lastSpringFrost}
        onApply={(lastSpringFrost) => set({ lastSpringFrost }, texts.setSpringFrost)}
      />
      <DayField
        label={texts.firstAutumnFrost}
        value={site.firstAutumnFrost}
        placeholder={texts.autumnDay}
        onApply={(firstAutumnFrost) => set({ firstAutumnFrost }, texts.setAutumnFrost)}
      />
    </>
  );
}
