import { useState } from "react";
import { useWindowStore } from "../../store/window/window-store.ts";
import type { Plan } from "../../core/model/plan.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { bedRows, newBed } from "../beds/commands.ts";
import { layOutSeedList } from "../arrange/commands.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { newSource } from "../kinds/commands.ts";
import { newVariety, placeDialog, varietyList } from "../seed-list/commands.ts";
import { drawEdge } from "../site/site-edge.ts";
import { plotFacts } from "../site/commands.ts";
import { commandById } from "./all-commands.ts";
import { firstStepsWords as words } from "./first-steps-words.ts";

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
  if (hasBed) return <NextStep plan={plan} onHide={hide} />;
  return (
    <section className="first-steps" aria-labelledby="first-steps-heading">
      <header className="region-head">
        <h2 id="first-steps-heading">{words.heading}</h2>
        <button type="button" className="quiet" onClick={hide}>
          {words.hide}
        </button>
      </header>
      <ol>
        <li>
          <p>
            {words.plot}
            {plan.site.outline && <Done />}
          </p>
          <CommandButton of={plotFacts}>{words.plotFacts}</CommandButton>
          <button type="button" onClick={drawEdge}>
            {words.drawEdge}
          </button>
        </li>
        <li>
          <p>{words.beds}</p>
          <CommandButton of={commandById("tool-draw-bed")}>{words.drawBed}</CommandButton>
          <CommandButton of={newBed}>{words.typeBed}</CommandButton>
          <CommandButton of={bedRows}>{words.bedRows}</CommandButton>
        </li>
        <li>
          <p>
            {words.varieties}
            {hasVariety && <Done />}
          </p>
          <VarietyButtons />
        </li>
        <li>
          <p>
            {words.around}
            {hasSource(plan) && <Done />}
          </p>
          <CommandButton of={newSource}>{words.source}</CommandButton>
        </li>
        <li>
          <p>{words.place}</p>
          <PlaceButton isOff />
        </li>
      </ol>
    </section>
  );
}

const hasSource = ({ surroundings }: Plan) => surroundings.some(({ what }) => what === "pollen");

interface NextStepProps {
  readonly plan: Plan;
  readonly onHide: () => void;
}

/** Once there are beds to see, the steps left are one line that leaves the beds in sight. */
function NextStep({ plan, onHide }: NextStepProps) {
  const [isAroundLater, setAroundLater] = useState(false);
  return (
    <section className="first-steps next-step" aria-label={words.next}>
      {plan.varieties.length === 0 ? (
        <>
          <p>{words.nextVarieties}</p>
          <VarietyButtons />
        </>
      ) : hasSource(plan) || isAroundLater ? (
        <>
          <p>{words.nextPlace}</p>
          <PlaceButton />
          <CommandButton of={layOutSeedList} />
        </>
      ) : (
        <>
          <p>{words.nextAround}</p>
          <CommandButton of={newSource}>{words.source}</CommandButton>
          <button type="button" onClick={() => setAroundLater(true)}>
            {words.later}
          </button>
        </>
      )}
      <button type="button" className="quiet" onClick={onHide}>
        {words.hide}
      </button>
    </section>
  );
}

function VarietyButtons() {
  return (
    <>
      <CommandButton of={newVariety}>{words.newVariety}</CommandButton>
      <CommandButton of={varietyList}>{words.varietyList}</CommandButton>
    </>
  );
}

function PlaceButton({ isOff = false }: { readonly isOff?: boolean }) {
  const place = () => placeDialog.open({ varietyId: null, bedId: null });
  return (
    <button type="button" disabled={isOff} onClick={place}>
      {words.placeVariety}
    </button>
  );
}

function Done() {
  return <span className="clear-text"> {words.done}</span>;
}
