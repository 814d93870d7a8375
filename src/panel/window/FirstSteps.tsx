import { useState } from "react";
import { useWindowStore } from "../../store/window/window-store.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { bedRows, newBed } from "../beds/commands.ts";
import { layOutSeedList } from "../arrange/commands.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { newVariety, placeDialog, varietyList } from "../seed-list/commands.ts";
import { commandById } from "./all-commands.ts";

/** What to do with an empty sheet; gone with the first planting. */
export function FirstSteps() {
  const plan = useShownPlan();
  const layout = useShownLayout();
  const tool = useWindowStore((state) => state.tool);
  const [isHidden, setHidden] = useState(false);
  // Whoever draws needs the ground beneath.
  if (layout.plantings.length > 0 || isHidden || tool !== "select") return null;
  const hasBed = layout.beds.length > 0;
  const hasVariety = plan.varieties.length > 0;
  const hide = () => setHidden(true);
  if (hasBed) return <NextStep hasVariety={hasVariety} onHide={hide} />;
  return (
    <section className="first-steps" aria-labelledby="first-steps-heading">
      <header className="region-head">
        <h2 id="first-steps-heading">Three steps to a first plan</h2>
        <button type="button" className="quiet" onClick={hide}>
          Hide
        </button>
      </header>
      <ol>
        <li>
          <p>Lay out beds: measured with a tape, or drawn</p>
          <CommandButton of={commandById("tool-draw-bed")}>Draw on the sheet</CommandButton>
          <CommandButton of={newBed}>Type its size</CommandButton>
          <CommandButton of={bedRows}>Rows of equal beds</CommandButton>
        </li>
        <li>
          <p>Add the varieties you want seed of{hasVariety && <Done />}</p>
          <VarietyButtons />
        </li>
        <li>
          <p>
            Drag each from the seed list onto a bed, and from there until nothing is too close; or
          </p>
          <PlaceButton isOff />
        </li>
      </ol>
    </section>
  );
}

interface NextStepProps {
  readonly hasVariety: boolean;
  readonly onHide: () => void;
}

/** Once there are beds to see, the steps left are one line that leaves the beds in sight. */
function NextStep({ hasVariety, onHide }: NextStepProps) {
  return (
    <section className="first-steps next-step" aria-label="Next step">
      {hasVariety ? (
        <>
          <p>Step 3 of 3: drag each variety from the seed list onto a bed, or</p>
          <PlaceButton />
          <CommandButton of={layOutSeedList} />
        </>
      ) : (
        <>
          <p>Step 2 of 3: add the varieties you want seed of</p>
          <VarietyButtons />
        </>
      )}
      <button type="button" className="quiet" onClick={onHide}>
        Hide
      </button>
    </section>
  );
}

function VarietyButtons() {
  return (
    <>
      <CommandButton of={newVariety}>Add a variety</CommandButton>
      <CommandButton of={varietyList}>Read a list</CommandButton>
    </>
  );
}

function PlaceButton({ isOff = false }: { readonly isOff?: boolean }) {
  const place = () => placeDialog.open({ varietyId: null, bedId: null });
  return (
    <button type="button" disabled={isOff} onClick={place}>
      Place a variety
    </button>
  );
}

function Done() {
  return <span className="clear-text"> ✓ done</span>;
}
