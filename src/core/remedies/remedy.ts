/** A way out of a finding: an edit, verified by running the checks on the edited plan. */
import { type CheckedLayout, recheckLayout } from "../checks/checked-layout.ts";
import { isWorse } from "../checks/acceptance.ts";
import type { Finding } from "../checks/all-checks.ts";
import type { CheckResult } from "../checks/run-checks.ts";
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
  /** Cautions and unknowns that it brings, or makes worse than they are. */
  readonly brings: readonly Finding[];
  /** Ids of those of them that were there before and get worse. */
  readonly worsens: ReadonlySet<string>;
  readonly conflictsAfter: number;
}

/**
 * Tries a proposal; null unless the finding is gone, no new conflict has come, and none that stays
 * has become worse.
 */
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
  const brings = broughtFindings(result, after);
  if (brings.some((entry) => entry.severity === "conflict")) return null;
  return {
    ...proposal,
    clears: result.findings
      .filter((entry) => entry.severity === "conflict" && !left.has(entry.id))
      .map((entry) => entry.id),
    brings,
    worsens: new Set(
      result.findings.map(({ id }) => id).filter((id) => brings.some((entry) => entry.id === id)),
    ),
    conflictsAfter: after.findings.filter((entry) => entry.severity === "conflict").length,
  };
}

/** Findings that were not there before, and those that were and are worse now. */
export function broughtFindings(before: CheckResult, after: CheckResult): readonly Finding[] {
  const known = new Map(before.findings.map((entry) => [entry.id, entry]));
  return after.findings.filter((entry) => {
    const was = known.get(entry.id);
    return was === undefined || isWorse(was, entry);
  });
}
