/**
 * Living with a finding. An acceptance holds for what was accepted and nothing worse: it keeps how
 * grave the finding was, which way, against whom, how near and in which layout. The finding
 * returns when any of these gets worse, or when what it requires changes.
 */
import type { Layout, Plan } from "../model/plan.ts";
import { OUTSIDE_TOLERANCE_M } from "./outside.ts";
import { type Finding, checkOf } from "./all-checks.ts";
import { type Severity, compareText } from "./finding.ts";

export type Acceptance = Plan["accepted"][number];

/** Nearer or farther by less than this is a stake's width, not another garden. No source; our choice. */
const SAME_PLACE_M = OUTSIDE_TOLERANCE_M;
const GRAVITY: Readonly<Record<Severity, number>> = { unknown: 0, caution: 0, conflict: 1 };

/** What is kept in the plan when the grower accepts a finding of a layout. */
export function acceptanceOf(finding: Finding, layoutId: string, reason: string): Acceptance {
  const amount = livedAmount(finding);
  return {
    finding: finding.id,
    reason,
    requiredM: finding.requiredM ?? null,
    layout: layoutId,
    severity: finding.severity,
    concerns: [...concernsOf(finding)],
    ...(finding.measuredM === undefined ? {} : { measuredM: finding.measuredM }),
    ...(amount === null ? {} : { amount }),
  };
}

/** Whether a finding of a layout is one the grower lives with, no worse than it was accepted. */
export function acceptance(plan: Plan, layout: Layout): (finding: Finding) => boolean {
  const entries = new Map<string, Acceptance[]>();
  for (const entry of plan.accepted) {
    if (entry.layout !== undefined && entry.layout !== layout.id) continue;
    const list = entries.get(entry.finding);
    if (list) list.push(entry);
    else entries.set(entry.finding, [entry]);
  }
  return (finding) => (entries.get(finding.id) ?? []).some((entry) => covers(entry, finding));
}

/** The acceptance that a finding of a layout falls under; undefined when none does. */
export function acceptanceFor(
  plan: Plan,
  layoutId: string,
  finding: Finding,
): Acceptance | undefined {
  return plan.accepted.find(
    (entry) =>
      entry.finding === finding.id &&
      (entry.layout === undefined || entry.layout === layoutId) &&
      covers(entry, finding),
  );
}

/**
 * Entries of older plan files say no more than the requirement: they hold where the id says all
 * there is, and not where the finding may since have become worse.
 */
function covers(entry: Acceptance, finding: Finding): boolean {
  const { severity, concerns, measuredM, amount } = entry;
  if (severity === undefined && !isSaidByItsId(finding)) return false;
  const known = concerns && new Set(concerns);
  return (
    entry.requiredM === (finding.requiredM ?? null) &&
    (severity === undefined || GRAVITY[finding.severity] <= GRAVITY[severity]) &&
    (known === undefined || concernsOf(finding).every((each) => known.has(each))) &&
    (measuredM === undefined || !isWorsePlaced(finding, measuredM)) &&
    (amount === undefined || (livedAmount(finding) ?? 0) <= amount)
  );
}

/**
 * Whether a finding that stays is worse after an edit than before: graver, against more, nearer,
 * longer, or more is required. How near something is of which a date or figure is missing, or that
 * only time clears, says nothing.
 */
export function isWorse(before: Finding, after: Finding): boolean {
  if (before === after) return false;
  if ((after.requiredM ?? 0) > (before.requiredM ?? 0)) return true;
  if (GRAVITY[after.severity] > GRAVITY[before.severity]) return true;
  const isOfPlace = after.severity !== "unknown" && after.check !== "unsure-time";
  if (isOfPlace && before.measuredM !== undefined && isWorsePlaced(after, before.measuredM)) {
    return true;
  }
  const amount = amountOf(before);
  if (amount !== null && (amountOf(after) ?? 0) > amount) return true;
  return isAgainstMore(before, after);
}

/** Whether it is against something that it was not against before. Ways out ask this of thousands. */
function isAgainstMore(before: Finding, after: Finding): boolean {
  if (before.check === "isolation" && after.check === "isolation") {
    return !after.atRisk.every((pair) =>
      before.atRisk.some(
        (was) => was.seedParent === pair.seedParent && was.pollenSource === pair.pollenSource,
      ),
    );
  }
  const known = concernsOf(before);
  return !concernsOf(after).every((each) => known.includes(each));
}

/** Whether nothing about a finding can get worse while its id and requirement stay. */
function isSaidByItsId(finding: Finding): boolean {
  const isAgainstSome = "against" in finding || finding.severity === "conflict";
  return !isAgainstSome && finding.measuredM === undefined && amountOf(finding) === null;
}

/** The reason an earlier acceptance gave that no longer covers the finding; null when there is none. */
export function earlierReason(plan: Plan, layoutId: string, findingId: string): string | null {
  const entry = plan.accepted.find(
    ({ finding, layout }) => finding === findingId && (layout === undefined || layout === layoutId),
  );
  return entry?.reason ?? null;
}

/** Against whom it is: directions at risk, stands that cannot be told apart, else the subjects. */
function concernsOf(finding: Finding): readonly string[] {
  switch (finding.check) {
    case "isolation":
      return finding.atRisk
        .map(({ seedParent, pollenSource }) => `${seedParent} from ${pollenSource}`)
        .sort(compareText);
    case "missing-bloom":
    case "missing-figure":
      return finding.against;
    case "other-season":
      return [...finding.against, ...finding.dates.map(({ what }) => what)];
    default:
      // What is about all of a variety, or about people, is no worse for one planting more.
      return checkOf(finding).about === undefined ? finding.subjects : [];
  }
}

/** How deep plantings lie in each other and how far they reach out grows worse, distances shrink. */
function isWorsePlaced({ check, measuredM }: Finding, acceptedM: number): boolean {
  if (measuredM === undefined) return false;
  const isDepth = check === "overlap" || check === "outside";
  return isDepth ? measuredM > acceptedM + SAME_PLACE_M : measuredM < acceptedM - SAME_PLACE_M;
}

/** As below; and the fewer days lie between blooms that dates alone keep apart, the worse. */
function livedAmount(finding: Finding): number | null {
  if (finding.check !== "unsure-time") return amountOf(finding);
  return Math.max(...finding.resting.map(({ gapDays }) => -(gapDays ?? 0)));
}

/** What else grows worse, larger being worse; null where nothing does. */
function amountOf(finding: Finding): number | null {
  switch (finding.check) {
    case "isolation":
      return Math.max(...finding.atRisk.map(({ overlapDays }) => overlapDays ?? 0));
    case "population":
      return -finding.plants;
    case "crowded":
      return finding.plants / finding.fits;
    case "late-seed":
    case "cleared-early":
      return finding.ripeLatest;
    default:
      return null;
  }
}
