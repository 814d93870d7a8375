import { type RefObject, useEffect, useState } from "react";
import type { WalkStop } from "../../core/fieldwork/walk-stops.ts";
import { LIMITS } from "../../core/model/limits.ts";
import type { Entry } from "../../core/model/plan.ts";
import { entryAsks } from "../../core/record/entry-fields.ts";
import { NoteField } from "../form/TextField.tsx";
import { ValueField } from "../form/NumberField.tsx";
import { FormProblem } from "../form/Field.tsx";
import { type Form, useForm } from "../form/use-form.ts";
import { type EntryDraft, draftProblem, emptyDraft, fieldsOf } from "../record/entry-draft.ts";
import { coverOptions, entryLabels, recordWords } from "../record/record-words.ts";
import { writeDown } from "../record/write-down.ts";
import { Stepper } from "./Stepper.tsx";
import { walkWords as words, whyChoices } from "./walk-words.ts";

interface EntryAskProps {
  readonly stop: WalkStop;
  readonly what: Entry["what"];
  readonly on: number;
  /** Holds why one must not go on: what was typed here would be lost. Null: one may. */
  readonly holdsRef: RefObject<string | null>;
  readonly onClose: () => void;
}

/** What an entry asks for, in sizes for wet hands. */
export function EntryAsk({ stop, what, on, holdsRef, onClose }: EntryAskProps) {
  const [start] = useState(() => startOf(stop, what, on));
  const form = useForm<EntryDraft>({
    start,
    problemOf: draftProblem,
    send: (draft) => {
      const fields = fieldsOf(draft, stop.id);
      if (fields) writeDown(fields, stop.code);
      onClose();
    },
  });
  const isTyped = JSON.stringify(form.draft) !== JSON.stringify(start);
  const { code } = stop;
  useEffect(() => {
    holdsRef.current = isTyped ? words.notAdded(entryLabels[what], code) : null;
    return () => {
      holdsRef.current = null;
    };
  }, [holdsRef, isTyped, what, code]);
  return (
    <form className="walk-ask" noValidate onSubmit={form.onSubmit} aria-label={entryLabels[what]}>
      <h3>
        {entryLabels[what]}, <span className="code">{stop.code}</span>
      </h3>
      <AskedValues form={form} />
      <FormProblem problem={form.problem} />
      <div className="walk-pair">
        <button type="button" onClick={onClose}>
          {words.cancel}
        </button>
        <button type="submit" className="primary">
          {words.write}
        </button>
      </div>
    </form>
  );
}

function startOf(stop: WalkStop, what: Entry["what"], on: number): EntryDraft {
  const planned = stop.planting?.cover ?? "none";
  return {
    ...emptyDraft(what, on),
    cover: planned === "none" ? "cage" : planned,
    count: what === "set out" ? stop.planting?.plants : undefined,
  };
}

function AskedValues({ form }: { readonly form: Form<EntryDraft> }) {
  const { draft, set } = form;
  const asks = entryAsks[draft.what];
  return (
    <>
      {asks.count && (
        <Stepper
          label={recordWords.counts[asks.count]}
          value={draft.count}
          onSet={(count) => set({ count })}
        />
      )}
      {asks.fruits && (
        <Stepper
          label={recordWords.fruits}
          value={draft.fruits}
          onSet={(fruits) => set({ fruits })}
        />
      )}
      {asks.grams && (
        <ValueField
          label={recordWords.grams}
          value={draft.grams}
          onApply={(grams) => set({ grams })}
        />
      )}
      {asks.cover && <CoverChoice form={form} />}
      {(draft.what === "rogued" || draft.what === "lost") && (
        <WhyChoice choices={whyChoices[draft.what]} form={form} />
      )}
      <NoteField
        label={asks.note ? recordWords.notes[asks.note] : recordWords.note}
        value={draft.note}
        onApply={(note) => void set({ note: note.slice(0, LIMITS.note) })}
      />
    </>
  );
}

function CoverChoice({ form }: { readonly form: Form<EntryDraft> }) {
  return (
    <div className="walk-chips" role="group" aria-label={recordWords.cover}>
      {coverOptions.map(({ value, label }) => (
        <button
          key={value}
          type="button"
          aria-pressed={form.draft.cover === value}
          onClick={() => form.set({ cover: value })}
        >
          {label}
        </button>
      ))}
    </div>
  );
}

interface WhyChoiceProps {
  readonly choices: readonly string[];
  readonly form: Form<EntryDraft>;
}

/** A reason by one press; pressed again it is taken away. */
function WhyChoice({ choices, form }: WhyChoiceProps) {
  const { note } = form.draft;
  return (
    <div className="walk-chips" role="group" aria-label={recordWords.notes.why}>
      {choices.map((why) => (
        <button
          key={why}
          type="button"
          aria-pressed={note === why}
          onClick={() => form.set({ note: note === why ? "" : why })}
        >
          {why}
        </button>
      ))}
    </div>
  );
}
