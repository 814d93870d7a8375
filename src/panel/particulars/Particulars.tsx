import { Suspense, lazy, useEffect, useMemo, useRef } from "react";
import { useWindowStore } from "../../store/window/window-store.ts";
import { LockedLine } from "./LockedLine.tsx";
import { countedObjects, selectedObjects } from "../state/selected-objects.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { newBed, newGround } from "../beds/commands.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import * as texts from "./words.ts";

const loadFields = () => import("./SelectedParticulars.tsx");

/** The fields are not needed to draw the sheet: they come while it is looked at. */
const SelectedParticulars = lazy(async () => ({
  default: (await loadFields()).SelectedParticulars,
}));

/** By then the sheet is drawn and the findings are listed. */
const SETTLED_MS = 2000;

/** Exact numbers of what is selected. */
export function Particulars() {
  const plan = useShownPlan();
  const layout = useShownLayout();
  const selection = useWindowStore((state) => state.selection);
  const selected = useMemo(
    () => selectedObjects(plan, layout, selection),
    [plan, layout, selection],
  );
  useEffect(() => {
    // Where this fails, the first selection tries again and says so.
    const timer = setTimeout(() => {
      loadFields().catch(() => undefined);
    }, SETTLED_MS);
    return () => clearTimeout(timer);
  }, []);
  const region = useRef<HTMLElement>(null);
  const chosen = selection.join(" ");
  useEffect(() => {
    // Another thing begins with its title, wherever the last one was read.
    if (chosen !== "") region.current?.closest(".drawer")?.scrollTo({ top: 0 });
  }, [chosen]);
  const { beds, plantings, surroundings } = selected;
  const total = beds.length + plantings.length + surroundings.length;
  return (
    <section ref={region} className="region particulars" aria-labelledby="particulars-heading">
      <header className="region-head">
        <h2 id="particulars-heading" tabIndex={-1}>
          {texts.particulars}
        </h2>
        <p className="region-note">
          {total === 0 ? texts.nothingSelected : countedObjects(selected)}
        </p>
      </header>
      {total === 0 ? (
        <NothingSelected />
      ) : (
        <Suspense fallback={<p role="status">{texts.loadingTheFields}</p>}>
          <SelectedParticulars selected={selected} />
        </Suspense>
      )}
      <LockedLine />
    </section>
  );
}

function NothingSelected() {
  return (
    <div className="region-empty">
      <p>{texts.selectSomething}</p>
      <div className="offers">
        <CommandButton of={newBed}>{texts.newBedSize}</CommandButton>
        <CommandButton of={newGround}>{texts.addGround}</CommandButton>
      </div>
    </div>
  );
}
