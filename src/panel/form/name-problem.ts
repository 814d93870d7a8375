/** What a plan takes as a name, in words. */
import { LIMITS } from "../../core/model/limits.ts";

/** @param what the beginning of the sentence: "A title has" */
export function lengthProblem(text: string, what = "A name has"): string | null {
  return text.length > LIMITS.name ? `${what} at most ${LIMITS.name} letters` : null;
}

/** @param missing what is said when nothing is typed */
export function nameProblem(text: string, missing: string, what?: string): string | null {
  return text.trim() === "" ? missing : lengthProblem(text, what);
}
