import { describeFinding } from "../../core/checks/all-checks.ts";
import { wordingOf } from "../../core/checks/checked-layout.ts";
import type { Now } from "../commands/command.ts";
import { filtered, findingRows, inOrder } from "./finding-rows.ts";
import { useFindingsState } from "./findings-state.ts";

/** Opens the finding after the one that is open, or the one before it, in the order of the list. */
export function stepFinding(now: Now, by: 1 | -1): void {
  const { without, check, isSelectionOnly } = useFindingsState.getState();
  const about = isSelectionOnly ? new Set(now.selection) : null;
  const listed = inOrder(
    findingRows(filtered(now.kept.result.findings, { without, check, about })),
  );
  const at = listed.findIndex(({ id }) => id === now.openFinding);
  const from = at < 0 && by < 0 ? 0 : at;
  const finding = listed[(from + by + listed.length) % listed.length];
  if (!finding) return;
  now.showFinding(finding.id);
  now.keepInView(finding.subjects);
  now.announce(`${describeFinding(finding, wordingOf(now.kept)).title}.`);
}
