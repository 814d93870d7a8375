/** A way out of a finding: an edit, verified by running the checks on the edited plan. */
import { type CheckedLayout, recheckLayout } from "../checks/checked-layout.ts";
import { isWorse } from "../checks/acceptance.ts";
import { type Finding, checkOf } from "../checks/all-checks.ts";
import type { CheckResult } from "../checks/run-checks.ts";
import type { Edit } from "../edits/edit.ts";

export type RemedyWay =
  | "move"
  | "other bed"
  | "swap"
  | "date"
  | "cover"
  | "cut"
  | "fewer plants"
  | "guard"
  | "ask"
  | "not for seed"
  | "other year";

/** What a way asks of the grower: for ranking, and for whoever looks for the mildest of many. */
export interface WayCost {
  /** Work in the season, hours on a rough scale of ours: 0 for what only changes on paper. */
  readonly work: number;
  /** Metres that plantings move on the sheet, all together. */
  readonly groundM: number;
  /** Days a start moves, whichever way. */
  readonly days: number;
  /** Cages it puts up. */
  readonly cages: number;
  /** Plants that are not grown. */
  readonly plantsLess: number;
  /** Id of the variety whose seed is not taken this season. */
  readonly seedOf: string | null;
  /** Id of the surrounding whose owner must say yes first: until then nothing is clear. */
  readonly askedOf: string | null;
}

export const NO_COST: WayCost = {
  work: 0,
  groundM: 0,
  days: 0,
  cages: 0,
  plantsLess: 0,
  seedOf: null,
  askedOf: null,
};

/** An edit that may clear a finding, before it has been tried. */
export interface Proposal {
  /** Tells it from any other: what is done, to what, by how much. */
  readonly id: string;
  readonly way: RemedyWay;
  /** What to do, e.g. "Move 8.9 m south-west into A05". */
  readonly title: string;
  /** What it entails, in plain sentences. */
  readonly notes: readonly string[];
  readonly edit: Edit;
  readonly cost: WayCost;
  /** Ids of plantings and surroundings it changes. */
  readonly touches: readonly string[];
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
  const edited = proposal.edit.apply(plan);
  // Locked things stay as they are: an edit that is held back clears nothing.
  if (edited === plan) return null;
  const after = recheckLayout(checked, edited)?.result;
  if (!after) return null;
  const left = new Set(after.findings.map((entry) => entry.id));
  if (left.has(finding.id) || isLeftUnknown(finding, after)) return null;
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

/** What turned from a conflict into something nobody can tell is not cleared. */
function isLeftUnknown(finding: Finding, { pairs }: CheckResult): boolean {
  const atRisk = checkOf(finding).pairsAtRisk?.(finding) ?? [];
  return pairs.some(
    ({ standing, seedParent, pollenSource }) =>
      standing === "unknown" &&
      atRisk.some((pair) => pair.seedParent === seedParent && pair.pollenSource === pollenSource),
  );
}

/** Findings that were not there before, and those that were and are worse now. */
export function broughtFindings(before: CheckResult, after: CheckResult): readonly Finding[] {
  const known = new Map(before.findings.map((entry) => [entry.id, entry]));
  return after.findings.filter((entry) => {
    const was = known.get(entry.id);
    return was === undefined || isWorse(was, entry);
  });
}
