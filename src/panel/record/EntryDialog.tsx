import { entryKinds } from "../../core/model/entry-schema.ts";
import type { Entry } from "../../core/model/plan.ts";
import { entryAsks } from "../../core/record/entry-fields.ts";
import { useFieldPerson } from "../../store/window/field-person.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { DayField } from "../form/DayField.tsx";
import { Dialog } from "../form/Dialog.tsx";
import { FormProblem } from "../form/Field.tsx";
import { nameProblem } from "../form/name-problem.ts";
import { CountField, ValueField } from "../form/NumberField.tsx";
import { NoteField, TextField } from "../form/TextField.tsx";
import { type Form, useForm } from "../form/use-form.ts";
import { today } from "../state/today.ts";
import { type EntryDraft, draftOf, draftProblem, emptyDraft, fieldsOf } from "./entry-draft.ts";
import { coverOptions, entryLabels, recordWords as words } from "./record-words.ts";
import { writeCorrection, writeDown } from "./write-down.ts";

interface EntryDialogProps {
  /** Id of the planting or surrounding. */
  readonly of: string;
  /** Its code or name. */
  readonly plot: string;
  /** A neighbour's ground has entries of its own. */
  readonly isOurs: boolean;
  /** The entry to be corrected; null: a new one. */
  readonly wrong: Entry | null;
  readonly onClose: () => void;
}

/** One entry of the field record, or the correction of one. */
export function EntryDialog({ of, plot, isOurs, wrong, onClose }: EntryDialogProps) {
  const form = useForm<EntryDraft>({
    start: () =>
      wrong ? draftOf(wrong) : emptyDraft(isOurs ? "first flower" : "looked at", today()),
    problemOf: draftProblem,
    send: (draft) => {
      const fields = fieldsOf(draft, of);
      if (!fields) return;
      if (wrong) writeCorrection(wrong, fields, plot);
      else writeDown(fields, plot);
      onClose();
    },
  });
  return (
    <Dialog title={wrong ? words.correctTitle(plot) : words.addTitle(plot)} onClose={onClose}>
      <form className="fields" noValidate onSubmit={form.onSubmit}>
        <ChoiceField
          label={words.what}
          value={form.draft.what}
          choices={entryKinds
            .filter((what) => isOffered(what, isOurs) || what === wrong?.what)
            .map((what) => ({ value: what, label: entryLabels[what] }))}
          onPick={(what) => form.set({ what })}
        />
        <DayField label={words.day} value={form.draft.on} onApply={(on) => form.set({ on })} />
        <AskedFields form={form} />
        <WhoField />
        {wrong && <p className="field-hint">{words.correctionHint}</p>}
        <FormProblem problem={form.problem} />
        <p className="dialog-actions">
          <button type="submit" className="primary">
            {wrong ? words.keepCorrection : words.keep}
          </button>
        </p>
      </form>
    </Dialog>
  );
}

/** Jobs are ticked in the calendar and the walk; a neighbour is asked about ground that is not ours. */
function isOffered(what: Entry["what"], isOurs: boolean): boolean {
  if (what === "done") return false;
  return what !== "neighbour asked" || !isOurs;
}

function AskedFields({ form }: { readonly form: Form<EntryDraft> }) {
  const { draft, set } = form;
  const asks = entryAsks[draft.what];
  return (
    <>
      {asks.count && (
        <CountField
          label={words.counts[asks.count]}
          value={draft.count}
          onApply={(count) => set({ count })}
        />
      )}
      {asks.fruits && (
        <CountField
          label={words.fruits}
          value={draft.fruits}
          onApply={(fruits) => set({ fruits })}
        />
      )}
      {asks.grams && (
        <ValueField label={words.grams} value={draft.grams} onApply={(grams) => set({ grams })} />
      )}
      {asks.cover && (
        <ChoiceField
          label={words.cover}
          value={draft.cover}
          choices={coverOptions}
          onPick={(cover) => set({ cover })}
        />
      )}
      <NoteField
        label={asks.note ? words.notes[asks.note] : words.note}
        value={draft.note}
        onApply={(note) => void set({ note })}
      />
    </>
  );
}

/** The name that goes with entries of this device. */
export function WhoField() {
  const { who, setWho } = useFieldPerson();
  return (
    <TextField
      label={words.who}
      value={who}
      hint={words.whoHint}
      onApply={(text) => {
        const problem = nameProblem(text);
        if (problem === null) setWho(text);
        return problem;
      }}
    />
  );
}
