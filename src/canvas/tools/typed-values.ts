/** Exact values typed while something is being drawn: two small fields beside the pointer. */
import { create } from "zustand";
import type { Point } from "../../core/geometry/point.ts";

export type TwoTexts = readonly [string, string];

/** The tool that is being typed for. */
export interface TypedOwner {
  /** The second one empty: only one value is asked for. */
  readonly labels: TwoTexts;
  /** What is to be known of the values, in place of the words on keys. */
  readonly note?: string;
  /** Shows what the texts give, an empty one meaning what the pointer says; why not, if it cannot. */
  readonly change: (texts: TwoTexts) => string | null;
  /** Enter: keeps what is shown. */
  readonly apply: () => void;
  /** Escape: the pointer alone decides again. */
  readonly dismiss: () => void;
}

interface TypedValues {
  readonly owner: TypedOwner | null;
  readonly texts: TwoTexts;
  readonly problem: string | null;
  /** Where the pointer was, pixels of the sheet. */
  readonly at: Point;
}

export const useTypedValues = create<TypedValues>()(() => ({
  owner: null,
  texts: ["", ""],
  problem: null,
  at: { x: 0, y: 0 },
}));

/** Whether a key begins a number. */
export function beginsNumber(key: string): boolean {
  return /^[\d.,]$/.test(key);
}

/** Opens the fields with the key that was pressed as the first letter, or empty. */
export function startTyping(owner: TypedOwner, key: string, at: Point): void {
  // Fields opened empty are not at fault yet.
  const problem = key === "" ? null : owner.change([key, ""]);
  useTypedValues.setState({ owner, at, texts: [key, ""], problem });
}

export function typeText(index: 0 | 1, text: string): void {
  const { owner, texts } = useTypedValues.getState();
  if (!owner) return;
  const next: TwoTexts = index === 0 ? [text, texts[1]] : [texts[0], text];
  useTypedValues.setState({ texts: next, problem: owner.change(next) });
}

/** Keeps what is typed, unless it cannot be read. */
export function applyTyped(): void {
  const { owner, texts } = useTypedValues.getState();
  if (!owner) return;
  const problem = owner.change(texts);
  useTypedValues.setState({ problem });
  if (problem !== null) return;
  stopTyping();
  owner.apply();
}

export function dismissTyped(): void {
  const { owner } = useTypedValues.getState();
  stopTyping();
  owner?.dismiss();
}

/** Takes the fields away and leaves what is drawn alone. */
export function stopTyping(): void {
  if (useTypedValues.getState().owner) useTypedValues.setState({ owner: null, problem: null });
}
