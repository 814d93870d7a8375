/**
 * Findings as the list shows them: those left by the filters, worst first, and many of one cause
 * in one line.
 */
import { type Finding, checkOf } from "../../core/checks/all-checks.ts";
import type { Severity } from "../../core/checks/finding.ts";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import { type Steps, workedOff } from "../state/slices.ts";

export interface FindingFilter {
  /** Severities that are left out. */
  readonly without: ReadonlySet<Severity>;
  /** Name of the only check shown; null: of all. */
  readonly check: string | null;
  /** Only what is about one of these; null: about anything. */
  readonly about: ReadonlySet<string> | null;
}

/** Findings of one check with one cause, told in one line. */
export interface FindingGroup {
  readonly id: string;
  /** Worst first. */
  readonly findings: readonly Finding[];
  /** Id of what all of them are about; null: they are alike and no more. */
  readonly cause: string | null;
}

export type FindingRow =
  | { readonly finding: Finding; readonly group?: never }
  | { readonly group: FindingGroup; readonly finding?: never };

/** So many of one cause become one line. */
export const GROUP_LEAST = 4;

const SEVERITIES: readonly Severity[] = ["conflict", "caution", "unknown"];

export function isFiltering({ without, check, about }: FindingFilter): boolean {
  return without.size > 0 || check !== null || about !== null;
}

/** How many findings there are, accepted ones left out; none of them is made for it. */
export function countOf({ counts }: Pick<CheckResult, "counts">): number {
  return SEVERITIES.reduce((sum, severity) => sum + counts[severity], 0);
}

/**
 * Titles of the checks that found something not accepted, by name, in the order of the findings;
 * of a fresh run no finding is made for it.
 */
export function titlesFound({
  byCheck,
  accepted,
}: Pick<CheckResult, "byCheck" | "accepted">): ReadonlyMap<string, string> {
  const titles = new Map<string, string>();
  for (const [place, severity] of SEVERITIES.entries()) {
    for (const [name, lists] of byCheck) {
      const put = accepted.filter((each) => each.check === name && each.severity === severity);
      if ((lists[place]?.size ?? 0) <= put.length) continue;
      titles.set(name, checkOf({ check: name as Finding["check"] }).title);
    }
  }
  return titles;
}

/** Has all findings made, in steps: of a fresh run they are made when they are read. */
export function* findingSteps({ byCheck }: Pick<CheckResult, "byCheck">): Steps<void> {
  for (const lists of byCheck.values()) {
    for (const list of lists) yield* list.making();
  }
}

/** What the filters leave. */
export function filtered(findings: readonly Finding[], filter: FindingFilter): readonly Finding[] {
  if (!isFiltering(filter)) return findings;
  const { without, check, about } = filter;
  return findings.filter(
    (finding) =>
      !without.has(finding.severity) &&
      (check === null || finding.check === check) &&
      (about === null || finding.subjects.some((id) => about.has(id))),
  );
}

/**
 * Lines of the list. Conflicts stand before cautions and unknowns; among one severity what falls
 * short by the largest share of its distance stands first, what has no distance after it in the
 * order of the checks. A group stands where its worst finding would.
 */
export function findingRows(findings: readonly Finding[]): readonly FindingRow[] {
  return workedOff(findingRowSteps(findings));
}

/** The same in steps, between which something else can be done. */
export function* findingRowSteps(findings: readonly Finding[]): Steps<readonly FindingRow[]> {
  const rows: FindingRow[] = [];
  for (const severity of SEVERITIES) {
    const ours = findings.filter((finding) => finding.severity === severity);
    yield;
    const own = worstFirst(ours);
    yield;
    rows.push(...(yield* inGroups(own)));
  }
  return rows;
}

function worstFirst(findings: readonly Finding[]): readonly Finding[] {
  const worths = Float64Array.from(findings, worth);
  return findings
    .map((_, place) => place)
    .sort((a, b) => (worths[b] as number) - (worths[a] as number))
    .map((place) => findings[place] as Finding);
}

/** The findings of the lines, one after the other. */
export function inOrder(rows: readonly FindingRow[]): readonly Finding[] {
  return rows.flatMap(({ finding, group }) => (group ? group.findings : [finding]));
}

/** The share of the required distance that is missing, 0 to 1; -1 where no distance is asked for. */
function worth({ measuredM, requiredM }: Finding): number {
  if (measuredM === undefined || requiredM === undefined || requiredM <= 0) return -1;
  return Math.max(0, 1 - measuredM / requiredM);
}

function* inGroups(findings: readonly Finding[]): Steps<readonly FindingRow[]> {
  const groupOf = new Map<Finding, FindingGroup>();
  const byCheck = new Map<string, Finding[]>();
  for (const finding of findings) {
    const list = byCheck.get(finding.check);
    if (list) list.push(finding);
    else byCheck.set(finding.check, [finding]);
  }
  for (const list of byCheck.values()) {
    for (const group of yield* groupsOf(list)) {
      for (const finding of group.findings) groupOf.set(finding, group);
    }
    yield;
  }
  const told = new Set<FindingGroup>();
  return findings.flatMap((finding): readonly FindingRow[] => {
    const group = groupOf.get(finding);
    if (!group) return [{ finding }];
    if (told.has(group)) return [];
    told.add(group);
    return [{ group }];
  });
}

/** The groups among findings of one check and severity, each finding in one at most. */
function* groupsOf(findings: readonly Finding[]): Steps<readonly FindingGroup[]> {
  if (findings.length < GROUP_LEAST) return [];
  const check = findings[0]?.check ?? "";
  const severity = findings[0]?.severity ?? "";
  const single = findings.filter(({ subjects }) => subjects.length < 2);
  const alike: readonly FindingGroup[] =
    single.length < GROUP_LEAST
      ? []
      : [{ id: `${check} ${severity}`, findings: single, cause: null }];
  const byTwo = findings.filter(({ subjects }) => subjects.length >= 2);
  yield;
  return [...alike, ...(yield* byCause(byTwo))];
}

/** So many findings are gone through in one step. */
const STEP_FINDINGS = 2000;

/** What most are about comes first and takes them; the next takes of those left. */
function* byCause(findings: readonly Finding[]): Steps<readonly FindingGroup[]> {
  const about = new Map<string, Finding[]>();
  for (const [place, finding] of findings.entries()) {
    if (place % STEP_FINDINGS === STEP_FINDINGS - 1) yield;
    for (const subject of finding.subjects) {
      const list = about.get(subject);
      if (list) list.push(finding);
      else about.set(subject, [finding]);
    }
  }
  const causes = [...about]
    .filter(([, list]) => list.length >= GROUP_LEAST)
    .sort(([, a], [, b]) => b.length - a.length);
  yield;
  const taken = new Set<Finding>();
  const groups: FindingGroup[] = [];
  let gone = 0;
  for (const [cause, list] of causes) {
    gone += list.length;
    if (gone > STEP_FINDINGS) {
      gone = 0;
      yield;
    }
    const left = list.filter((finding) => !taken.has(finding));
    if (left.length < GROUP_LEAST) continue;
    for (const finding of left) taken.add(finding);
    groups.push({ id: `${left[0]?.check} ${left[0]?.severity} ${cause}`, findings: left, cause });
  }
  return groups;
}
