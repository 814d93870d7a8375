/** What is said of a change of the plan: what happened, and how the findings stand now. */
import { codeChanges } from "../../core/beds/codes.ts";
import type { CheckedLayout } from "../../core/checks/checked-layout.ts";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import type { Edit } from "../../core/edits/edit.ts";
import { formatLength } from "../../core/model/length.ts";
import { deedOf, deedWords, findingCountWords } from "../../core/words/deed-words.ts";
import type { Readings } from "./reading.ts";

/** `Moved bed A02 by 3 m. 2 conflicts, 1 caution.`, with codes it changed and what it left alone. */
export function keptWords(
  { title, movedM }: Edit,
  note: string | null,
  before: CheckedLayout,
  { kept, grown }: Readings,
): string {
  const codes = codeChanges(before.layout, kept.layout).slice(0, 3);
  const deed = deedOf(title);
  const said = movedM ? deedWords.movedBy(deed, formatLength(movedM, kept.plan.units)) : deed;
  const parts = [said, ...(note === null ? [] : [note]), ...codes];
  return [...parts, `${spoken((grown ?? kept).result)}.`].join(". ");
}

/** `Undone: Move bed A02. 3 conflicts.` */
export function travelWords(
  title: string,
  direction: "back" | "forward",
  { kept, grown }: Readings,
): string {
  const said = direction === "back" ? deedWords.undone(title) : deedWords.redone(title);
  return `${said}. ${spoken((grown ?? kept).result)}.`;
}

function spoken({ counts }: CheckResult): string {
  return findingCountWords(counts);
}
