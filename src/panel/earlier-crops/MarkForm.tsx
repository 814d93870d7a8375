import { addGroundMarks, changeGroundMark } from "../../core/edits/ground.ts";
import type { GroundMark } from "../../core/model/plan.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { DayField } from "../form/DayField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { NoteField, TextField } from "../form/TextField.tsx";
import { nameProblem } from "../form/name-problem.ts";
import { useForm } from "../form/use-form.ts";
import { KindField } from "../kinds/KindField.tsx";
import { commit } from "../state/plan-actions.ts";
import { useShownLayout } from "../state/use-shown-plan.ts";
import { WhereFields } from "./WhereFields.tsx";
import {
  diseaseChoices,
  isOther,
  markDraft,
  markProblem,
  markTitle,
  marksOfDraft,
} from "./mark-words.ts";
import * as texts from "./words.ts";

interface MarkFormProps {
  /** Null: a new one. */
  readonly mark: GroundMark | null;
  readonly onClose: () => void;
}

/** A disease seen on ground: which, where, when; several beds make one mark each. */
export function MarkForm({ mark, onClose }: MarkFormProps) {
  const layout = useShownLayout();
  const { draft, problem, set, onSubmit } = useForm({
    start: () => markDraft(mark, layout),
    problemOf: markProblem,
    send: (typed) => {
      const [first, ...more] = marksOfDraft(typed, mark, layout);
      if (first && mark && more.length === 0) {
        commit(changeGroundMark({ ...first, id: mark.id }, markTitle(first)));
      } else if (first) commit(addGroundMarks([first, ...more], markTitle(first)));
      onClose();
    },
  });
  return (
    <Dialog title={mark ? texts.changeAMark : texts.markDiseaseGround} onClose={onClose}>
      <form className="fields" noValidate onSubmit={onSubmit}>
        <ChoiceField
          label={texts.disease}
          value={draft.disease}
          choices={diseaseChoices}
          onPick={(disease) => set({ disease })}
        />
        {isOther(draft) && (
          <>
            <TextField
              label={texts.itsName}
              value={draft.name}
              onApply={(name) => nameProblem(name) ?? set({ name })}
            />
            <KindField kindId={draft.kind} onPick={(kind) => set({ kind })} />
          </>
        )}
        <DayField label={texts.seenOn} value={draft.seenOn} onApply={(seenOn) => set({ seenOn })} />
        <WhereFields draft={draft} isNew={mark === null} onSet={set} />
        <NoteField label={texts.note} value={draft.note} onApply={(note) => set({ note })} />
        {problem !== null && (
          <p className="field-reason" role="alert">
            {problem}
          </p>
        )}
        <p className="dialog-actions">
          <button type="submit" className="primary">
            {mark ? texts.apply : texts.addTheMark}
          </button>
        </p>
      </form>
    </Dialog>
  );
}
