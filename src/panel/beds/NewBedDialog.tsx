import { useMemo } from "react";
import { type BedAnchor, anchorOf, middleOf } from "../../core/edits/bed-rows.ts";
import { addBed } from "../../core/edits/object-edits.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { LengthField } from "../form/LengthField.tsx";
import { PlaceFields, RectangleSizeFields } from "../form/RectangleFields.tsx";
import { TextField } from "../form/TextField.tsx";
import { useForm } from "../form/use-form.ts";
import { type TypedBed, bedFromTyped, codeProblem, suggestedBed } from "./new-bed.ts";
import { commit, planNow, useKept, windowNow } from "../state/plan-actions.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { AnchorField } from "./AnchorField.tsx";
import { bedPlaceWords as words } from "./bed-place-words.ts";
import { bedRows } from "./commands.ts";
import { OffPlot } from "./OffPlot.tsx";
import { useBedPreview } from "./use-bed-preview.ts";
import * as texts from "./words.ts";

/** A bed by its numbers, measured with a tape rather than drawn. */
export function NewBedDialog({ onClose }: { readonly onClose: () => void }) {
  const { plan, layout } = useKept();
  const form = useForm({
    start: () => anchored(suggestedBed(plan, layout), lastAnchor),
    send: (bedTyped) => {
      const { layoutId } = planNow();
      const bed = bedFromTyped(plan, layout, withMiddle(bedTyped));
      lastAnchor = bedTyped.anchor;
      onClose();
      commit(addBed(layoutId, bed));
      windowNow().select([bed.id]);
      windowNow().keepInView([bed.id]);
    },
  });
  const { draft: typed, set } = form;
  const beds = useMemo(
    () => [bedFromTyped(plan, layout, withMiddle(typed))],
    [plan, layout, typed],
  );
  useBedPreview(beds);
  const anchor = typed.isRound ? "middle" : typed.anchor;
  return (
    <Dialog title={texts.newBed} onClose={onClose} isAside>
      <form className="fields" noValidate onSubmit={form.onSubmit}>
        <TextField
          label={texts.code}
          value={typed.code}
          hint={texts.codeHint}
          onApply={(text) => codeProblem(layout, text, null) ?? set({ code: text.trim() })}
        />
        <ChoiceField
          label={texts.shape}
          value={typed.isRound ? "round" : "straight"}
          choices={shapeChoices}
          onPick={(shape) => set(shaped(typed, shape === "round"))}
        />
        <BedSizeFields typed={typed} onSet={set} />
        {!typed.isRound && (
          <AnchorField
            label={words.anchor}
            anchor={anchor}
            onPick={(next) => set(anchored(withMiddle(typed), next))}
          />
        )}
        <PlaceFields place={typed} labels={words.placeOf[anchor]} onSet={set} />
        <p className="soft" role="status">
          {words.shown}
        </p>
        <OffPlot beds={beds} />
        <p className="dialog-actions">
          <button type="submit" className="primary">
            {texts.addTheBed}
          </button>
          <CommandButton of={bedRows}>{texts.rowsOfBedsInstead}</CommandButton>
        </p>
      </form>
    </Dialog>
  );
}

/** Its x and y are those of its anchor; a round bed has only a middle. */
interface AnchoredBed extends TypedBed {
  readonly anchor: BedAnchor;
}

/** As chosen the last time. */
let lastAnchor: BedAnchor = "corner";

function anchored(bed: TypedBed, anchor: BedAnchor): AnchoredBed {
  return { ...bed, ...anchorOf(bed, anchor), anchor };
}

function withMiddle(bed: AnchoredBed): AnchoredBed {
  return bed.isRound ? bed : { ...bed, ...middleOf(bed, bed.anchor) };
}

/** The middle stays where it is. */
function shaped(bed: AnchoredBed, isRound: boolean): AnchoredBed {
  const middle = { ...withMiddle(bed), isRound };
  return isRound ? middle : anchored(middle, bed.anchor);
}

const shapeChoices = [
  { value: "straight", label: texts.rectangleBed },
  { value: "round", label: texts.roundShape },
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
        label={texts.diameter}
        value={widthM}
        isSize
        onApply={(metres) => onSet({ widthM: metres })}
      />
    );
  }
  return <RectangleSizeFields sizes={typed} onSet={onSet} />;
}
