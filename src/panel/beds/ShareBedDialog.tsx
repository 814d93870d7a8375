import { useState } from "react";
import { addPlantings } from "../../core/edits/object-edits.ts";
import { type BedShares, type SharedOut, shareBed } from "../../core/edits/split-bed.ts";
import { formatLength } from "../../core/model/length.ts";
import type { Plan } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { LengthField } from "../form/LengthField.tsx";
import { onFormSubmit } from "../form/use-form.ts";
import { commit, windowNow } from "../state/plan-actions.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./words.ts";
import "./beds.css";

const shareWords = [
  { value: "wanted", label: texts.shareByWanted },
  { value: "equal", label: texts.shareEqually },
] as const;

const refusals = {
  "no ground": texts.noFreeGround,
  "no varieties": texts.tickVarieties,
  "gaps leave nothing": texts.gapsTakeAll,
} as const;

/** One bed for several varieties, one behind the other from its near end: one step. */
export function ShareBedDialog({
  id,
  onClose,
}: {
  readonly id: string;
  readonly onClose: () => void;
}) {
  const plan = useShownPlan();
  const layout = useShownLayout();
  const book = usePlanStore((state) => state.book);
  const [asked, setAsked] = useState<BedShares>({ bed: id, varieties: [], by: "wanted", gapM: 0 });
  const bed = layout.beds.find((entry) => entry.id === id);
  if (!bed) return null;
  const set = (changes: Partial<BedShares>) => {
    setAsked((before) => ({ ...before, ...changes }));
    return null;
  };
  const tick = (variety: string, isOn: boolean) =>
    set({
      varieties: isOn
        ? [...asked.varieties, variety]
        : asked.varieties.filter((entry) => entry !== variety),
    });
  const shared = shareBed(plan, layout, book, asked);
  const place = () => {
    if (!shared.ok) return;
    const plantings = shared.shares.map(({ planting }) => planting);
    onClose();
    const title = texts.shareBedAmong(bed.code, plantings.length);
    commit(addPlantings(layout.id, plantings, title));
    windowNow().select(plantings.map((planting) => planting.id));
  };
  return (
    <Dialog title={texts.shareBedAmongVarieties(bed.code)} onClose={onClose} isWide>
      <form className="fields" noValidate onSubmit={onFormSubmit(place)}>
        <VarietyTicks plan={plan} chosen={asked.varieties} onTick={tick} />
        <ChoiceField
          label={texts.shares}
          value={asked.by}
          choices={shareWords}
          onPick={(by) => set({ by })}
        />
        <LengthField
          label={texts.gapBetweenTwo}
          value={asked.gapM}
          onApply={(gapM) => set({ gapM })}
        />
        <SharePreview plan={plan} shared={shared} />
        <p className="dialog-actions">
          <button type="submit" className="primary" disabled={!shared.ok}>
            {texts.addThePlantings}
          </button>
        </p>
      </form>
    </Dialog>
  );
}

interface VarietyTicksProps {
  readonly plan: Plan;
  readonly chosen: readonly string[];
  readonly onTick: (variety: string, isOn: boolean) => void;
}

function VarietyTicks({ plan, chosen, onTick }: VarietyTicksProps) {
  const layout = useShownLayout();
  const placedOf = (variety: string) =>
    layout.plantings
      .filter((planting) => planting.variety === variety)
      .reduce((sum, { plants }) => sum + (plants ?? 0), 0);
  if (plan.varieties.length === 0) return <p>{texts.seedListEmpty}</p>;
  return (
    <fieldset className="tick-list">
      <legend>{texts.varietiesInOrder}</legend>
      {plan.varieties.map(({ id, name, wantedPlants }) => {
        const place = chosen.indexOf(id);
        return (
          <label key={id}>
            <input
              type="checkbox"
              checked={place >= 0}
              onChange={(event) => onTick(id, event.target.checked)}
            />
            <span>
              {name}
              {wantedPlants !== undefined && (
                <span className="soft"> · {texts.plantsPlaced(placedOf(id), wantedPlants)}</span>
              )}
              {place >= 0 && <b> · {place + 1}</b>}
            </span>
          </label>
        );
      })}
    </fieldset>
  );
}

function SharePreview({ plan, shared }: { readonly plan: Plan; readonly shared: SharedOut }) {
  if (!shared.ok) return <p role="status">{refusals[shared.reason]}</p>;
  const nameOf = (variety: string) => plan.varieties.find(({ id }) => id === variety)?.name ?? "";
  return (
    <table className="preview-table">
      <thead>
        <tr>
          <th scope="col">{texts.code}</th>
          <th scope="col">{texts.variety}</th>
          <th scope="col">{texts.from}</th>
          <th scope="col">{texts.to}</th>
          <th scope="col">{texts.plants}</th>
        </tr>
      </thead>
      <tbody>
        {shared.shares.map(({ planting, stretch, wanted }) => (
          <tr key={planting.id}>
            <th scope="row" className="code">
              {planting.code}
            </th>
            <td>{nameOf(planting.variety)}</td>
            <td>{formatLength(stretch.fromM, plan.units)}</td>
            <td>{formatLength(stretch.toM, plan.units)}</td>
            <td>
              {(planting.plants ?? 0) < wanted
                ? texts.plantsOfWanted(planting.plants ?? 0, wanted)
                : planting.plants}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
