/** In which order changes are made, so that each can be applied by itself and none brings a conflict. */
import { type CheckedLayout, recheckLayout } from "../checks/checked-layout.ts";
import type { Finding } from "../checks/all-checks.ts";
import { spoilsGround } from "../remedies/rank-ways.ts";
import { type Proposal, broughtFindings } from "../remedies/remedy.ts";
import { type ObjectChange, objectChange } from "./object-change.ts";

export interface ClearingStep {
  /** One change, or several that only go together. */
  readonly changes: readonly Pick<Proposal, "id" | "title" | "notes" | "way">[];
  readonly change: ObjectChange;
  /** Ids of conflicts it clears when those before it are made. */
  readonly clears: readonly string[];
}

/** What no change may bring: a conflict, something unknown, ground that is no longer its own. */
export function isHarm(finding: Finding): boolean {
  return finding.severity !== "caution" || spoilsGround({ brings: [finding] });
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
    const next = firstHarmless(now, left) ?? { changes: left, made: tried(now, left) };
    if (!next.made) break;
    steps.push(next.made.step);
    now = next.made.after;
    left = left.filter((change) => !next.changes.includes(change));
  }
  return steps;
}

function firstHarmless(now: CheckedLayout, left: readonly Proposal[]) {
  for (const change of left) {
    const made = tried(now, [change]);
    if (made?.isHarmless === true) return { changes: [change], made };
  }
  return null;
}

interface Made {
  readonly step: ClearingStep;
  readonly after: CheckedLayout;
  readonly isHarmless: boolean;
}

function tried(now: CheckedLayout, changes: readonly Proposal[]): Made | null {
  const plan = changes.reduce((next, { edit }) => edit.apply(next), now.plan);
  const after = recheckLayout(now, plan);
  if (!after) return null;
  const left = new Set(after.result.findings.map(({ id }) => id));
  return {
    step: {
      changes: changes.map(({ id, title, notes, way }) => ({ id, title, notes, way })),
      change: objectChange(now.plan, plan, now.layout.id),
      clears: now.result.findings
        .filter(({ severity, id }) => severity === "conflict" && !left.has(id))
        .map(({ id }) => id),
    },
    after,
    isHarmless: !broughtFindings(now.result, after.result).some(isHarm),
  };
}
