/** What stands on one label, in the order of its worth. */

/** Stakes for plantings; packets for what they will give, and for lots on the shelf. */
export type LabelUse = "stakes" | "packets" | "lots";

export interface LabelFacts {
  /** A code is read from afar and never broken; a name may take two lines. */
  readonly headIs: "code" | "name";
  /** Largest on the label, one size on all labels of a sheet. */
  readonly head: string;
  readonly second: string;
  /** What must not be missed, in bold; empty: nothing. */
  readonly warning: string;
  readonly lines: readonly string[];
  /** For a code read by machine; the same words stand on the label. */
  readonly machine: string;
  /** What the label should say and the plan does not know. */
  readonly missing: readonly string[];
}

/** The words that are any. */
export function present(words: readonly string[]): readonly string[] {
  return words.filter((each) => each !== "");
}
