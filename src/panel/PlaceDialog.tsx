import { useState } from "react";
import { freeStretches } from "../core/edits/place-planting.ts";
import { formatLength } from "../core/model/length.ts";
import type { Bed } from "../core/model/plan.ts";
import { plantVariety } from "../store/plant-variety.ts";
import { ChoiceField } from "./ChoiceField.tsx";
import { Dialog } from "./Dialog.tsx";
import { onFormSubmit } from "./form-submit.ts";
import { useShownLayout, useShownPlan } from "./use-shown-plan.ts";
import { viewNow } from "./view-state.ts";

interface PlaceDialogProps {
  readonly varietyId: string | null;
  readonly bedId: string | null;
  readonly onClose: () => void;
}

/** Placing a variety without dragging: which variety, which bed. */
export function PlaceDialog({ varietyId, bedId, onClose }: PlaceDialogProps) {
  const plan = useShownPlan();
  const layout = useShownLayout();
  const freeOf = (bed: Bed) =>
    freeStretches(layout, bed).reduce((sum, { fromM, toM }) => sum + toM - fromM, 0);
  const bedLabel = (bed: Bed) => {
    if (bed.outline.shape !== "rectangle") return bed.code;
    const free = freeOf(bed);
    return free === 0 ? `${bed.code}, full` : `${bed.code}, ${formatLength(free, plan.units)} free`;
  };
  const roomiest = layout.beds.find((bed) => freeOf(bed) > 0) ?? layout.beds[0];
  const [variety, setVariety] = useState(varietyId ?? plan.varieties[0]?.id ?? "");
  const [bed, setBed] = useState(bedId ?? roomiest?.id ?? "");
  if (layout.beds.length === 0 || plan.varieties.length === 0) {
    const isBedMissing = layout.beds.length === 0;
    return (
      <Dialog title="Place a variety" onClose={onClose}>
        <p>{isBedMissing ? "There is no bed in this layout yet." : "The seed list is empty."}</p>
        <p className="dialog-actions">
          <button
            type="button"
            className="primary"
            onClick={() =>
              viewNow().ask(isBedMissing ? { kind: "new-bed" } : { kind: "variety", id: null })
            }
          >
            {isBedMissing ? "New bed by its size" : "Add a variety"}
          </button>
        </p>
      </Dialog>
    );
  }
  const place = () => {
    onClose();
    plantVariety(variety, bed);
  };
  return (
    <Dialog title="Place a variety" onClose={onClose}>
      <form className="fields" noValidate onSubmit={onFormSubmit(place)}>
        <ChoiceField
          label="Variety"
          value={variety}
          choices={plan.varieties.map(({ id, name }) => ({ value: id, label: name }))}
          onPick={setVariety}
        />
        <ChoiceField
          label="In bed"
          value={bed}
          choices={layout.beds.map((entry) => ({ value: entry.id, label: bedLabel(entry) }))}
          onPick={setBed}
          hint="It takes the first free stretch that holds the plants still wanted."
        />
        <p className="dialog-actions">
          <button type="submit" className="primary">
            Place
          </button>
        </p>
      </form>
    </Dialog>
  );
}
