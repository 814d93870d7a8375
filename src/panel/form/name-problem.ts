/** What a plan takes as a name, in words. */
import { LIMITS } from "../../core/model/limits.ts";
import * as words from "./words.ts";

interface Named {
  /** Said of a longer one. */
  readonly tooLong?: (most: number) => string;
  /** Said when nothing is typed; left out: it may be empty. */
  readonly isNeeded?: string;
  /** Letters at most; left out: those of a name. */
  readonly most?: number;
}

/** Why a text cannot be the name of something, or null. */
export function nameProblem(
  text: string,
  { tooLong = words.nameTooLong, isNeeded, most = LIMITS.name }: Named = {},
): string | null {
  if (isNeeded !== undefined && text.trim() === "") return isNeeded;
  return text.length > most ? tooLong(most) : null;
}
