/**
 * A field that is typed into: what is typed stays in the field until Enter or leaving applies it,
 * once. Escape brings the old value back; a text that cannot be used says why and changes nothing;
 * a text left as it was is not written back, so display rounding never reaches the plan.
 */
import { onAnotherPlan } from "../../store/plan/plan-store.ts";
import { type KeyboardEvent, type RefObject, useEffect, useRef, useState } from "react";

export interface Draft<Element extends HTMLElement> {
  readonly text: string;
  /** Why the typed text cannot be used, or null. */
  readonly reason: string | null;
  readonly field: {
    readonly ref: RefObject<Element | null>;
    /** Whether something is typed that is not applied yet: then undo belongs to the field. */
    readonly "data-draft": "typed" | "none";
    readonly onFocus: () => void;
    readonly onBlur: () => void;
    readonly onKeyDown: (event: KeyboardEvent) => void;
  };
  readonly type: (text: string) => void;
}

/** @param apply takes the typed text; returns why it cannot be used, or null once it is applied */
export function useDraft<Element extends HTMLElement>(
  shown: string,
  apply: (text: string) => string | null,
  isMultiline = false,
): Draft<Element> {
  const ref = useRef<Element>(null);
  const [draft, setDraft] = useState<string | null>(null);
  const [reason, setReason] = useState<string | null>(null);
  const [isFocused, setFocused] = useState(false);

  // The sheet keeps the pointer from taking the focus: leave the field before anything else happens.
  useEffect(() => {
    if (!isFocused) return;
    const leave = (event: PointerEvent) => {
      if (event.target !== ref.current) ref.current?.blur();
    };
    document.addEventListener("pointerdown", leave, true);
    return () => document.removeEventListener("pointerdown", leave, true);
  }, [isFocused]);

  const restore = () => {
    setDraft(null);
    setReason(null);
  };
  // What is typed belongs to the plan it was typed in.
  useEffect(
    () =>
      onAnotherPlan(() => {
        setDraft(null);
        setReason(null);
      }),
    [],
  );
  const finish = () => {
    if (draft === null) return;
    const refusal = draft.trim() === shown ? null : apply(draft);
    if (refusal === null) restore();
    else setReason(refusal);
  };
  return {
    text: draft ?? shown,
    reason,
    type: setDraft,
    field: {
      ref,
      "data-draft": draft === null ? "none" : "typed",
      onFocus: () => setFocused(true),
      onBlur: () => {
        setFocused(false);
        finish();
      },
      onKeyDown: (event) => {
        if (event.key === "Enter" && !isMultiline) finish();
        if (event.key !== "Escape" || draft === null) return;
        event.preventDefault();
        event.stopPropagation();
        restore();
      },
    },
  };
}
