/** A way out of a finding: an edit, verified by running the checks on the edited plan. */
import type { CropBook } from "../kinds/crop-book.ts";
import type { Finding } from "../checks/finding.ts";
import { type CheckResult, runChecks } from "../checks/run-checks.ts";
import type { Edit } from "../edits/edit.ts";
import type { Layout, Plan } from "../model/plan.ts";

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

/** What remedies are made from: the committed plan and the checks of one layout. */
export interface RemedyContext {
  readonly plan: Plan;
  readonly layout: Layout;
  readonly book: CropBook;
  readonly result: CheckResult;
}

/** Tries a proposal; null unless the finding is gone and no new conflict has come. */
export function verified(
  { plan, layout, book, result }: RemedyContext,
  finding: Finding,
  proposal: Proposal,
): Remedy | null {
  const edited = proposal.edit.apply(plan);
  const editedLayout = edited.layouts.find((entry) => entry.id === layout.id);
  if (!editedLayout) return null;
  const after = runChecks(edited, editedLayout, book, result);
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
