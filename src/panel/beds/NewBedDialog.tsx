import { addBed } from "../../core/edits/object-edits.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { LengthField } from "../form/LengthField.tsx";
import { PlaceFields, RectangleSizeFields } from "../form/RectangleFields.tsx";
import { TextField } from "../form/TextField.tsx";
import { useForm } from "../form/use-form.ts";
import { type TypedBed, bedFromTyped, codeProblem, suggestedBed } from "./new-bed.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { commit, planNow, windowNow } from "../state/plan-actions.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { bedRows } from "./commands.ts";

/** A bed by its numbers, measured with a tape rather than drawn. */
export function NewBedDialog({ onClose }: { readonly onClose: () => void }) {
  const plan = useShownPlan();
  const layout = useShownLayout();
  const form = useForm({
    start: () => suggestedBed(plan, layout),
    send: (bedTyped) => {
      const { layoutId } = planNow();
      const bed = bedFromTyped(plan, layout, bedTyped);
      onClose();
      commit(addBed(layoutId, bed));
      windowNow().select([bed.id]);
      windowNow().bringIntoView([bed.id]);
    },
  });
  const { draft: typed, set } = form;
  return (
    <Dialog title="New bed" onClose={onClose}>
      <form className="fields" noValidate onSubmit={form.onSubmit}>
        <TextField
          label="Code"
          value={typed.code}
          hint="What stands on the stake."
          onApply={(text) => codeProblem(layout, text, null) ?? set({ code: text.trim() })}
        />
        <ChoiceField
          label="Shape"
          value={typed.isRound ? "round" : "straight"}
          choices={shapeChoices}
          onPick={(shape) => set({ isRound: shape === "round" })}
        />
        <BedSizeFields typed={typed} onSet={set} />
        <PlaceFields place={typed} onSet={set} />
        <p className="dialog-actions">
          <button type="submit" className="primary">
            Add the bed
          </button>
          <CommandButton of={bedRows}>Rows of equal beds ...</CommandButton>
        </p>
      </form>
    </Dialog>
  );
}

const shapeChoices = [
  { value: "straight", label: "rectangle" },
  { value: "round", label: "round" },
] as const;

interface BedSizeFieldsProps {
  readonly typed: TypedBed;
  readonly onSet: (change: Partial<TypedBed>) => null;
}

function BedSizeFields({ typed, onSet }: BedSizeFieldsProps) {
  const { isRound, widthM } = typed;
  if (isRound) {
    return (
      <LengthField
        label="Diameter"
        value={widthM}
        isSize
        onApply={(metres) => onSet({ widthM: metres })}
      />
    );
  }
  return <RectangleSizeFields sizes={typed} onSet={onSet} />;
}
