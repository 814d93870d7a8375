import { setOutline } from "../core/edits/move-objects.ts";
import type { Stretch } from "../core/edits/place-planting.ts";
import type { Planting } from "../core/model/plan.ts";
import { LengthField } from "./LengthField.tsx";
import { alongBedOf, onStretch, stretchProblem } from "./bed-stretch.ts";
import { useShownLayout } from "./use-shown-plan.ts";
import { commit } from "./plan-actions.ts";

/** From where to where along its bed, measured from the bed's near end; nothing when it lies otherwise. */
export function StretchFields({ planting }: { readonly planting: Planting }) {
  const layout = useShownLayout();
  const along = alongBedOf(planting, layout.beds);
  if (along === null) return null;
  const apply = (stretch: Stretch) => {
    const problem = stretchProblem(stretch);
    if (problem !== null) return problem;
    const title = `Place ${planting.code} along its bed`;
    commit(setOutline(layout.id, planting.id, onStretch(along, stretch), title));
    return null;
  };
  const { fromM, toM } = along.stretch;
  return (
    <div className="field-pair">
      <LengthField
        label="Along bed, from"
        value={fromM}
        isCoordinate
        onApply={(metres) => apply({ fromM: metres, toM })}
      />
      <LengthField
        label="Along bed, to"
        value={toM}
        isCoordinate
        onApply={(metres) => apply({ fromM, toM: metres })}
      />
    </div>
  );
}
