import { useState } from "react";
import { plantsWanted } from "../../core/edits/new-planting.ts";
import { type Placed, freeStretches, placeInBed } from "../../core/beds/place-planting.ts";
import { type LengthUnit, formatLength } from "../../core/model/length.ts";
import type { Bed } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { plantVariety } from "../../store/plan/plant-variety.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { CountField } from "../form/NumberField.tsx";
import { onFormSubmit } from "../form/form-submit.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { newBed } from "../beds/commands.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { newVariety } from "./commands.ts";

interface PlaceDialogProps {
  readonly varietyId: string | null;
  readonly bedId: string | null;
  readonly onClose: () => void;
}

/** Placing a variety without dragging: which variety, which bed. */
export function PlaceDialog({ varietyId, bedId, onClose }: PlaceDialogProps) {
  const plan = useShownPlan();
  const layout = useShownLayout();
  const book = usePlanStore((state) => state.book);
  const freeOf = (bed: Bed) =>
    freeStretches(layout, bed).reduce((sum, { fromM, toM }) => sum + toM - fromM, 0);
  const bedLabel = (bed: Bed) => {
    if (bed.outline.shape !== "rectangle") return bed.code;
    const free = freeOf(bed);
    return free === 0 ? `${bed.code}, full` : `${bed.code}, ${formatLength(free, plan.units)} free`;
  };
  const roomiest = layout.beds.find((bed) => freeOf(bed) > 0) ?? layout.beds[0];
  const [variety, setVariety] = useState(varietyId ?? plan.varieties[0]?.id ?? "");
  const [plants, setPlants] = useState<number | null>(null);
  const [bed, setBed] = useState(bedId ?? roomiest?.id ?? "");
  if (layout.beds.length === 0 || plan.varieties.length === 0) {
    const isBedMissing = layout.beds.length === 0;
    return (
      <Dialog title="Place a variety" onClose={onClose}>
        <p>{isBedMissing ? "There is no bed in this layout yet." : "The seed list is empty."}</p>
        <p className="dialog-actions">
          <CommandButton of={isBedMissing ? newBed : newVariety} className="primary">
            {isBedMissing ? "New bed by its size" : "Add a variety"}
          </CommandButton>
        </p>
      </Dialog>
    );
  }
  const chosen = plan.varieties.find(({ id }) => id === variety);
  const wanted = chosen ? plantsWanted(layout, chosen) : 1;
  const count = plants ?? wanted;
  const kind = chosen && book.kind(chosen.kind);
  const target = layout.beds.find(({ id }) => id === bed);
  const placed = kind && target ? placeInBed(layout, target, kind, count) : null;
  const place = () => {
    onClose();
    plantVariety(variety, bed, undefined, count);
  };
  return (
    <Dialog title="Place a variety" onClose={onClose}>
      <form className="fields" noValidate onSubmit={onFormSubmit(place)}>
        <ChoiceField
          label="Variety"
          value={variety}
          choices={plan.varieties.map(({ id, name }) => ({ value: id, label: name }))}
          onPick={(id) => {
            setVariety(id);
            setPlants(null);
          }}
        />
        <ChoiceField
          label="In bed"
          value={bed}
          choices={layout.beds.map((entry) => ({ value: entry.id, label: bedLabel(entry) }))}
          onPick={setBed}
        />
        <CountField
          label="Plants"
          value={count}
          onApply={(next) => setPlants(next ?? null)}
          hint={placeWords(placed, count, plan.units)}
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

/** What the plants will take, and how many do not fit. */
function placeWords(placed: Placed | null, count: number, unit: LengthUnit): string {
  if (!placed) return "This bed has no free ground.";
  const { plants, rows, outline } = placed;
  const takes = `${formatLength(outline.lengthM, unit)} of the bed in ${rows} ${rows === 1 ? "row" : "rows"}`;
  return plants < count
    ? `Only ${plants} of ${count} fit: they take ${takes}, the longest free stretch.`
    : `They take ${takes}, on the first free stretch that holds them.`;
}
