/** A form whose values are a draft until it is sent off. */
import { type FormEvent, useState } from "react";

export interface Form<Draft> {
  readonly draft: Draft;
  /** Why the draft cannot be used as it was sent, or null. */
  readonly problem: string | null;
  /** Changes some of it. Returns null, as fields want of what takes their value. */
  readonly set: (change: Partial<Draft>) => null;
  readonly alter: (change: (before: Draft) => Draft) => null;
  /** Whether it can be used; says why not otherwise. */
  readonly check: () => boolean;
  readonly onSubmit: (event: FormEvent<HTMLFormElement>) => void;
}

interface FormOf<Draft> {
  readonly start: Draft | (() => Draft);
  /** Why the draft cannot be used, or null; left out where fields refuse all that is wrong. */
  readonly problemOf?: (draft: Draft) => string | null;
  readonly send: (draft: Draft) => void;
}

export function useForm<Draft extends object>({
  start,
  problemOf,
  send,
}: FormOf<Draft>): Form<Draft> {
  const [draft, setDraft] = useState(start);
  const [problem, setProblem] = useState<string | null>(null);
  const alter = (change: (before: Draft) => Draft) => {
    setProblem(null);
    setDraft(change);
    return null;
  };
  const check = () => {
    const refusal = problemOf?.(draft) ?? null;
    setProblem(refusal);
    return refusal === null;
  };
  return {
    draft,
    problem,
    alter,
    set: (change) => alter((before) => ({ ...before, ...change })),
    check,
    onSubmit: onFormSubmit(() => {
      if (check()) send(draft);
    }),
  };
}

/**
 * Sends a form off, unless one of its fields still holds something that cannot be used: then that
 * field gets the focus and nothing happens.
 */
export function onFormSubmit(send: () => void): (event: FormEvent<HTMLFormElement>) => void {
  return (event) => {
    event.preventDefault();
    const bad = event.currentTarget.querySelector<HTMLElement>('[aria-invalid="true"]');
    if (bad) bad.focus();
    else send();
  };
}
