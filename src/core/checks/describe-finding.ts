/** Findings to words: the one way to them, for screen, paper and command line alike. */
import { type Finding, checkOf } from "./all-checks.ts";
import type { Description, Wording } from "./wording.ts";

export function describeFinding(finding: Finding, wording: Wording): Description {
  return checkOf(finding).describe(finding, wording);
}
