/** In which order changes are made, so that each can be applied by itself and none brings a conflict. */
import { type CheckedLayout, recheckLayout } from "../checks/checked-layout.ts";
import type { Edit } from "../edits/edit.ts";
import { spoilsGround } from "../remedies/rank-ways.ts";
import { type Proposal, broughtFindings } from "../remedies/remedy.ts";

export interface ClearingStep {
  /** One change, or several that only go together. */
  readonly changes: readonly Proposal[];
  readonly edit: Edit;
  /** Ids of conflicts it clears when those before it are made. */
  readonly clears: readonly string[];
}

/** One after the other as long as one can be made without harm; what is left then goes together. */
export function clearingSteps(
  checked: CheckedLayout,
  changes: readonly Proposal[],
): readonly ClearingStep[] {
  const steps: ClearingStep[] = [];
  let left = [...changes];
  let now = checked;
  while (left.length > 0) {
    const next = left.map((change) => tried(now, [change])).find((made) => made !== null);
    const made = next ?? tried(now, left, true);
    if (!made) break;
    steps.push(made.step);
    now = made.after;
    left = left.filter((change) => !made.step.changes.includes(change));
  }
  return steps;
}

interface Made {
  readonly step: ClearingStep;
  readonly after: CheckedLayout;
}

/** Null where it would bring a conflict, something unknown or an overlap. */
function tried(now: CheckedLayout, changes: readonly Proposal[], isSure = false): Made | null {
  const edit: Edit = {
    title: changes.map(({ title }) => title).join("; "),
    apply: (plan) => changes.reduce((next, each) => each.edit.apply(next), plan),
  };
  const after = recheckLayout(now, edit.apply(now.plan));
  if (!after) return null;
  const brings = broughtFindings(now.result, after.result);
  const isHarmless = brings.every(
    (finding) => finding.severity === "caution" && !spoilsGround({ brings: [finding] }),
  );
  if (!isHarmless && !isSure) return null;
  const left = new Set(after.result.findings.map(({ id }) => id));
  const clears = now.result.findings
    .filter(({ severity, id }) => severity === "conflict" && !left.has(id))
    .map(({ id }) => id);
  return { step: { changes, edit, clears }, after };
}
