import { useId, useState } from "react";
import { type Edit, patched } from "../core/edits/edit.ts";
import { addVariety, changeVariety, removeVariety } from "../core/edits/object-edits.ts";
import type { Variety } from "../core/model/plan.ts";
import { CheckField } from "./ChoiceField.tsx";
import { Dialog } from "./Dialog.tsx";
import { KindField } from "./KindField.tsx";
import { CountField } from "./NumberField.tsx";
import { TextField } from "./TextField.tsx";
import { type Aside, VarietyAside } from "./VarietyAside.tsx";
import { VarietyFigures } from "./VarietyFigures.tsx";
import { onFormSubmit } from "./form-submit.ts";
import { useShownPlan } from "./use-shown-plan.ts";
import { blankVariety, varietyProblem, withKind } from "./variety-edit.ts";
import { commit } from "./plan-actions.ts";

interface VarietyDialogProps {
  /** Null for a new variety. */
  readonly id: string | null;
  readonly onClose: () => void;
}

export function VarietyDialog({ id, onClose }: VarietyDialogProps) {
  const plan = useShownPlan();
  const existing = plan.varieties.find((entry) => entry.id === id);
  const [variety, setVariety] = useState(() => existing ?? blankVariety(plan));
  const [problem, setProblem] = useState<string | null>(null);
  const [aside, setAside] = useState<Aside | null>(null);
  const problemId = useId();
  const set = (changes: Partial<{ [Key in keyof Variety]: Variety[Key] | undefined }>) => {
    setProblem(null);
    setVariety((before) => patched<Variety>(before, changes));
    return null;
  };
  const setKind = (kind: string) => {
    setProblem(null);
    setVariety((before) => withKind(before, kind));
  };
  const keep = () => {
    const refusal = varietyProblem(plan, variety);
    setProblem(refusal);
    if (refusal !== null) return;
    commit(existing ? changeAll(existing, variety) : addVariety(variety));
    onClose();
  };
  return (
    <Dialog title={existing ? `Edit ${existing.name}` : "Add a variety"} onClose={onClose} isWide>
      <form className="fields" noValidate onSubmit={onFormSubmit(keep)}>
        <TextField
          label="Name"
          value={variety.name}
          isWide
          onApply={(text) =>
            text.length > 200 ? "A name has at most 200 letters" : set({ name: text.trim() })
          }
        />
        <KindField
          kindId={variety.kind === "" ? undefined : variety.kind}
          onPick={setKind}
          onAdd={(name) => setAside({ kind: "own-kind", name })}
        />
        <CountField
          label="Plants wanted"
          value={variety.wantedPlants}
          onApply={(wantedPlants) => {
            set({ wantedPlants });
          }}
        />
        <CheckField
          label="It is a hybrid (its seed does not come true)"
          isOn={variety.hybrid === true}
          onSet={(isOn) => set({ hybrid: isOn ? true : undefined })}
        />
        <VarietyFigures
          variety={variety}
          onChange={set}
          onRead={() => setAside({ kind: "figures" })}
        />
        {problem !== null && (
          <p className="field-reason" id={problemId} role="alert">
            {problem}
          </p>
        )}
        <p className="dialog-actions">
          <button type="submit" className="primary">
            {existing ? "Keep changes" : "Add to the seed list"}
          </button>
          {existing && <RemoveVariety variety={existing} onClose={onClose} />}
        </p>
      </form>
      <VarietyAside
        aside={aside}
        variety={variety}
        onFigure={(figure) => set({ figure })}
        onKind={setKind}
        onClose={() => setAside(null)}
      />
    </Dialog>
  );
}

/** Fields that were taken away are named as undefined, so that the edit takes them away too. */
function changeAll(before: Variety, { id, ...changes }: Variety): Edit {
  const gone = Object.keys(before).filter((key) => key !== "id" && !(key in changes));
  const all = { ...Object.fromEntries(gone.map((key) => [key, undefined])), ...changes };
  return changeVariety(id, all, `Change ${changes.name}`);
}

function RemoveVariety({ variety, onClose }: { variety: Variety; onClose: () => void }) {
  const plan = useShownPlan();
  const plantings = plan.layouts.flatMap((layout) =>
    layout.plantings.filter((planting) => planting.variety === variety.id),
  ).length;
  const label =
    plantings === 0
      ? "Delete the variety"
      : `Delete it and its ${plantings} ${plantings === 1 ? "planting" : "plantings"}`;
  const remove = () => {
    commit(removeVariety(variety.id, `Delete ${variety.name}`));
    onClose();
  };
  return (
    <button type="button" onClick={remove}>
      {label}
    </button>
  );
}
