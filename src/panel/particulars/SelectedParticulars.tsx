import { Suspense, lazy } from "react";
import { useWindowStore } from "../../store/window/window-store.ts";
import { ActionsButton } from "../commands/ActionsButton.tsx";
import { BedParticulars } from "./BedParticulars.tsx";
import { LineUpFields } from "../beds/LineUpFields.tsx";
import { LockField } from "./LockField.tsx";
import { PlantingParticulars } from "./PlantingParticulars.tsx";
import { GroundSums, SeveralSurroundings } from "./SeveralGround.tsx";
import { SeveralBeds, SeveralPlantings } from "./SeveralParticulars.tsx";
import { SurroundingParticulars } from "./SurroundingParticulars.tsx";
import type { SelectedObjects } from "../state/selected-objects.ts";
import { objectNames } from "../../core/model/object-names.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { deleteSelected } from "../commands/edit-commands.ts";
import { showSelection } from "../commands/view-commands.ts";
import { placeVariety } from "../seed-list/commands.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import "./particulars.css";
import * as texts from "./dialog-words.ts";

const PlotSummary = lazy(async () => ({
  default: (await import("../walk/PlotSummary.tsx")).PlotSummary,
}));

/** As the styles have it: one region at a time, over the foot of the sheet. */
function isSmallScreen(): boolean {
  return matchMedia("(width <= 60rem), (height <= 31rem)").matches;
}

interface SelectedParticularsProps {
  readonly selected: SelectedObjects;
}

/** The fields of the one object selected, or what several have in common. */
export function SelectedParticulars({ selected }: SelectedParticularsProps) {
  const selection = useWindowStore((state) => state.selection);
  const { beds, plantings, surroundings } = selected;
  const [bed] = beds;
  const [planting] = plantings;
  const [surrounding] = surroundings;
  const total = beds.length + plantings.length + surroundings.length;
  const plot = total === 1 ? (planting ?? surrounding) : undefined;
  return (
    <>
      {plot && isSmallScreen() && (
        <Suspense fallback={null}>
          <PlotSummary id={plot.id} />
        </Suspense>
      )}
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
        <h3>{texts.lineUpAndSpace}</h3>
        <LineUpFields />
      </div>
    </div>
  );
}

function SelectionActions({ selected }: { selected: SelectedObjects }) {
  const plan = useShownPlan();
  const layout = useShownLayout();
  const selection = useWindowStore((state) => state.selection);
  const isOneBed = selection.length === 1 && selected.beds.length === 1;
  const names = objectNames(plan, layout, selection);
  return (
    <div className="region-foot">
      <LockField selected={selected} names={names} />
      <ActionsButton ids={selection} names={names} />
      <CommandButton of={showSelection}>{texts.showOnSheet}</CommandButton>
      {isOneBed && <CommandButton of={placeVariety}>{texts.placeVariety}</CommandButton>}
      <CommandButton
        of={deleteSelected}
        onRun={() => document.getElementById("particulars-heading")?.focus()}
      >
        {texts.deleteSelected(names)}
      </CommandButton>
    </div>
  );
}
