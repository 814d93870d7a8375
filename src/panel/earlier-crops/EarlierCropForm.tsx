import {
  type NewEarlierCrop,
  addEarlierCrops,
  changeEarlierCrop,
} from "../../core/edits/earlier-crops.ts";
import { patched } from "../../core/edits/edit.ts";
import type { CropBook } from "../../core/kinds/crop-book.ts";
import type { EarlierCrop } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { KindField } from "../kinds/KindField.tsx";
import { CountField } from "../form/NumberField.tsx";
import { NoteField, TextField } from "../form/TextField.tsx";
import {
  cropCount,
  cropDraft,
  cropName,
  cropsOfDraft,
  draftProblem,
  wentToSeedWords,
} from "./earlier-crop-words.ts";
import { WhereFields } from "./WhereFields.tsx";
import { nameProblem } from "../form/name-problem.ts";
import { useForm } from "../form/use-form.ts";
import { commit } from "../state/plan-actions.ts";
import { choicesOf } from "../state/plan-words.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./words.ts";

interface EarlierCropFormProps {
  /** Null: a new one. */
  readonly crop: EarlierCrop | null;
  readonly onClose: () => void;
}

/** What grew where and when; several beds make one crop each. */
export function EarlierCropForm({ crop, onClose }: EarlierCropFormProps) {
  const plan = useShownPlan();
  const layout = useShownLayout();
  const book = usePlanStore((state) => state.book);
  const form = useForm({
    start: () => cropDraft(crop, plan, layout),
    problemOf: (typed) => draftProblem(typed, plan),
    send: (typed) => {
      keepCrops(crop, cropsOfDraft(typed, crop, layout), book);
      onClose();
    },
  });
  const { draft, problem, set } = form;
  return (
    <Dialog title={crop ? texts.changeAnEarlierCrop : texts.addAnEarlierCrop} onClose={onClose}>
      <form className="fields" noValidate onSubmit={form.onSubmit}>
        <KindField kindId={draft.kind} onPick={(kind) => set({ kind })} />
        <TextField
          label={texts.variety}
          value={draft.varietyName}
          hint={texts.ownVarietyNoRisk}
          onApply={(varietyName) =>
            nameProblem(varietyName) ?? set({ varietyName: varietyName.trim() })
          }
        />
        <CountField
          label={texts.yearField}
          value={draft.year}
          hint={texts.whenHarvestedShedSeed}
          onApply={(year) => set({ year })}
        />
        <ChoiceField
          label={texts.wentToSeed}
          value={draft.wentToSeed}
          choices={choicesOf(wentToSeedWords)}
          onPick={(wentToSeed) => set({ wentToSeed })}
        />
        <WhereFields draft={draft} isNew={crop === null} onSet={set} />
        <NoteField label={texts.note} value={draft.note} onApply={(note) => set({ note })} />
        {problem !== null && (
          <p className="field-reason" role="alert">
            {problem}
          </p>
        )}
        <p className="dialog-actions">
          <button type="submit" className="primary">
            {crop ? texts.apply : texts.addToThePlan}
          </button>
        </p>
      </form>
    </Dialog>
  );
}

/** One crop takes the place of the one it was; several are added. */
function keepCrops(
  crop: EarlierCrop | null,
  crops: readonly NewEarlierCrop[],
  book: CropBook,
): void {
  const [first, ...more] = crops;
  if (crop && first && more.length === 0) {
    const { varietyName, note } = first;
    commit(changeEarlierCrop(patched(crop, { ...first, varietyName, note })));
  } else if (first) {
    const title = more.length === 0 ? cropName(first, book) : cropCount(crops.length);
    commit(addEarlierCrops(crops, texts.addCrops(title)));
  }
}
