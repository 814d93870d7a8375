import { useShownPlan } from "../state/use-shown-plan.ts";
import { harvestDialog } from "./dialogs.ts";
import * as texts from "./words.ts";

/** Once a harvest or cleaning of it is written down: into a lot with it. */
export function HarvestOffer({ plantingId }: { readonly plantingId: string }) {
  const { entries } = useShownPlan();
  const isHarvested = entries.some(
    ({ of, what }) => of === plantingId && (what === "harvested" || what === "cleaned"),
  );
  if (!isHarvested) return null;
  return (
    <p className="offers">
      <button type="button" onClick={() => harvestDialog.open({ plantingId })}>
        {texts.harvestIntoALot}
      </button>
    </p>
  );
}
