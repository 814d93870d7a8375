import { removeObjects } from "../../core/edits/object-edits.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { ActionsButton } from "../commands/ActionsButton.tsx";
import { BedParticulars } from "./BedParticulars.tsx";
import { LineUpFields } from "../beds/LineUpFields.tsx";
import { LockField } from "./LockField.tsx";
import { PlantingParticulars } from "./PlantingParticulars.tsx";
import { GroundSums, SeveralSurroundings } from "./SeveralGround.tsx";
import { SeveralBeds, SeveralPlantings } from "./SeveralParticulars.tsx";
import { SurroundingParticulars } from "./SurroundingParticulars.tsx";
import type { SelectedObjects } from "../state/selected-objects.ts";
import { useShownLayout } from "../state/use-shown-plan.ts";
import { viewNow } from "../state/view-state.ts";
import { commit, planNow } from "../state/plan-actions.ts";
import "./particulars.css";

interface SelectedParticularsProps {
  readonly selected: SelectedObjects;
}

/** The fields of the one object selected, or what several have in common. */
export function SelectedParticulars({ selected }: SelectedParticularsProps) {
  const selection = usePlanStore((state) => state.selection);
  const { beds, plantings, surroundings } = selected;
  const [bed] = beds;
  const [planting] = plantings;
  const [surrounding] = surroundings;
  const total = beds.length + plantings.length + surroundings.length;
  return (
    <>
      {total === 1 && bed && <BedParticulars key={bed.id} bed={bed} />}
      {total === 1 && planting && <PlantingParticulars key={planting.id} planting={planting} />}
      {total === 1 && surrounding && (
        <SurroundingParticulars key={surrounding.id} surrounding={surrounding} />
      )}
      {total > 1 && <Several key={selection.join(" ")} selected={selected} />}
      <SelectionActions selected={selected} />
    </>
  );
}

function Several({ selected }: { readonly selected: SelectedObjects }) {
  const { beds, plantings, surroundings } = selected;
  return (
    <div className="several">
      {beds.length > 0 && <SeveralBeds beds={beds} />}
      {plantings.length > 0 && <SeveralPlantings plantings={plantings} />}
      {surroundings.length > 0 && <SeveralSurroundings items={surroundings} />}
      <div className="fields">
        <GroundSums selected={selected} />
      </div>
      <div>
        <h3>Line up and space</h3>
        <LineUpFields />
      </div>
    </div>
  );
}

function SelectionActions({ selected }: { selected: SelectedObjects }) {
  const layoutId = useShownLayout().id;
  const selection = usePlanStore((state) => state.selection);
  const [bed] = selected.beds;
  const names = [
    ...selected.beds.map((entry) => `bed ${entry.code}`),
    ...selected.plantings.map((entry) => entry.code),
    ...selected.surroundings.map((entry) => entry.label),
  ];
  const what = names.length === 1 ? (names[0] ?? "") : `${names.length} objects`;
  const show = () => {
    viewNow().showSheet();
    planNow().bringIntoView(selection);
  };
  const remove = () => {
    commit(removeObjects(layoutId, selection, `Delete ${what}`));
    document.getElementById("particulars-heading")?.focus();
  };
  const isLocked = [...selected.beds, ...selected.plantings, ...selected.surroundings].every(
    (item) => item.locked === true,
  );
  return (
    <div className="region-foot">
      <LockField selected={selected} names={what} />
      <ActionsButton ids={selection} names={what} />
      <button type="button" onClick={show}>
        Show on the sheet
      </button>
      {names.length === 1 && bed && (
        <button
          type="button"
          onClick={() => viewNow().ask({ kind: "place", varietyId: null, bedId: bed.id })}
        >
          Place a variety
        </button>
      )}
      <button
        type="button"
        disabled={isLocked}
        title={isLocked ? "Unlock it first" : undefined}
        onClick={remove}
      >
        Delete {what}
      </button>
    </div>
  );
}
