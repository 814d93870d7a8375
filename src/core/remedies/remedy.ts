/** A way out of a finding: an edit, verified by running the checks on the edited plan. */
import { type CheckedLayout, recheckLayout } from "../checks/checked-layout.ts";
import type { Finding } from "../checks/all-checks.ts";
import type { Edit } from "../edits/edit.ts";

export type RemedyWay = "move" | "other bed" | "swap" | "date" | "cover" | "cut" | "not for seed";

/** An edit that may clear a finding, before it has been tried. */
export interface Proposal {
  readonly way: RemedyWay;
  /** What to do, e.g. "Move 8.9 m south-west into A05". */
  readonly title: string;
  /** What it entails, in plain sentences. */
  readonly notes: readonly string[];
  readonly edit: Edit;
  /** How much it disturbs the plan: smaller goes first. Metres moved, or set by way. */
  readonly disturbance: number;
  /** Which planting it takes into which bed: of two to the same, the lesser is kept. */
  readonly into?: string;
}

export interface Remedy extends Proposal {
  /** Ids of conflicts it clears, the finding itself among them. */
  readonly clears: readonly string[];
  /** Findings of any severity that it brings. */
  readonly brings: readonly Finding[];
  readonly conflictsAfter: number;
}

/** Tries a proposal; null unless the finding is gone and no new conflict has come. */
export function verified(
  checked: CheckedLayout,
  finding: Finding,
  proposal: Proposal,
): Remedy | null {
  const { plan, result } = checked;
  const after = recheckLayout(checked, proposal.edit.apply(plan))?.result;
  if (!after) return null;
  const left = new Set(after.findings.map((entry) => entry.id));
  if (left.has(finding.id)) return null;
  const before = new Set(result.findings.map((entry) => entry.id));
  const brings = after.findings.filter((entry) => !before.has(entry.id));
  if (brings.some((entry) => entry.severity === "conflict")) return null;
  return {
    ...proposal,
    clears: result.findings
      .filter((entry) => entry.severity === "conflict" && !left.has(entry.id))
      .map((entry) => entry.id),
    brings,
    conflictsAfter: after.findings.filter((entry) => entry.severity === "conflict").length,
  };
}
