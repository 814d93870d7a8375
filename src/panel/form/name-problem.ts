/** What a plan takes as a name, in words. */
import { LIMITS } from "../../core/model/limits.ts";

interface Named {
  /** The beginning of the sentence: "A title has". */
  readonly what?: string;
  /** Said when nothing is typed; left out: it may be empty. */
  readonly isNeeded?: string;
  /** Letters at most; left out: those of a name. */
  readonly most?: number;
}

/** Why a text cannot be the name of something, or null. */
export function nameProblem(
  text: string,
  { what = "A name has", isNeeded, most = LIMITS.name }: Named = {},
): string | null {
  if (isNeeded !== undefined && text.trim() === "") return isNeeded;
  return text.length > most ? `${what} at most ${most} letters` : null;
}
