import type { ReactNode } from "react";
import { LIMITS } from "../../core/model/limits.ts";
import { Field, useFieldParts } from "./Field.tsx";
import { nameProblem } from "./name-problem.ts";
import { useDraft } from "./use-draft.ts";
import * as texts from "./field-words.ts";

interface TextFieldProps {
  readonly label: string;
  readonly value: string;
  /** Takes the typed text; returns why it cannot be used, or null once it is applied. */
  readonly onApply: (text: string) => string | null;
  readonly hint?: ReactNode;
  readonly placeholder?: string | undefined;
  readonly isNumeric?: boolean;
  readonly isWide?: boolean;
}

export function TextField(props: TextFieldProps) {
  const { label, value, onApply, hint, placeholder, isNumeric = false, isWide = false } = props;
  const draft = useDraft<HTMLInputElement>(value, onApply);
  const parts = useFieldParts(hint, draft.reason);
  return (
    <Field label={label} parts={parts}>
      <input
        {...parts.control}
        {...draft.field}
        className={isWide ? "wide" : undefined}
        type="text"
        inputMode={isNumeric ? "decimal" : "text"}
        autoComplete="off"
        spellCheck={false}
        placeholder={placeholder}
        value={draft.text}
        onChange={(event) => draft.type(event.target.value)}
      />
    </Field>
  );
}

interface NoteFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onApply: (text: string) => void;
}

/** Several lines; applied on leaving. */
export function NoteField({ label, value, onApply }: NoteFieldProps) {
  const draft = useDraft<HTMLTextAreaElement>(
    value,
    (text) => {
      const problem = nameProblem(text, { tooLong: texts.noteTooLong, most: LIMITS.note });
      if (problem !== null) return problem;
      onApply(text.trim());
      return null;
    },
    true,
  );
  const parts = useFieldParts(null, draft.reason);
  return (
    <Field label={label} parts={parts}>
      <textarea
        {...parts.control}
        {...draft.field}
        rows={2}
        value={draft.text}
        onChange={(event) => draft.type(event.target.value)}
      />
    </Field>
  );
}
