/**
 * One path from plan to findings, for screen, paper and command line alike. Passing the result of
 * the run before carries forward whatever the edit did not touch; the result equals a fresh run.
 */
import type { CropBook } from "../kinds/crop-book.ts";
import { outlineOf } from "../geometry/outline.ts";
import { changedIds } from "../model/changed-ids.ts";
import type { Bed, Layout, Plan } from "../model/plan.ts";
import { acceptance } from "./acceptance.ts";
import { type Finding, allChecks } from "./all-checks.ts";
import type { BedOutline, Check } from "./check.ts";
import { type FindingBase, type Severity, compareText } from "./finding.ts";
import { isolationPairs } from "./isolation.ts";
import type { IsolationPair } from "./isolation-pair.ts";
import { type Stand, resolveStands } from "./stand.ts";

export interface CheckResult {
  /** Conflicts first, then cautions, then unknowns; within one, in the order of the checks. */
  readonly findings: readonly Finding[];
  /** Findings the grower has accepted, and that are no worse than what was accepted. */
  readonly accepted: readonly Finding[];
  /** Directed pairs that distance does not clear, with what clears them. */
  readonly pairs: readonly IsolationPair[];
  readonly pairsByParent: ReadonlyMap<string, readonly IsolationPair[]>;
  readonly stands: readonly Stand[];
  readonly standById: ReadonlyMap<string, Stand>;
  readonly bedOutlines: ReadonlyMap<string, BedOutline>;
  /** By name of the check, accepted ones as well; `foundBy` reads it. */
  readonly byCheck: ReadonlyMap<string, readonly Finding[]>;
}

const SEVERITY_ORDER: Readonly<Record<Severity, number>> = { conflict: 0, caution: 1, unknown: 2 };

export function runChecks(
  plan: Plan,
  layout: Layout,
  book: CropBook,
  previous?: CheckResult,
): CheckResult {
  const stands = resolveStands(plan, layout, book, previous?.standById);
  const standById = new Map(stands.map((stand) => [stand.id, stand]));
  const bedOutlines = resolveBeds(layout.beds, previous?.bedOutlines);
  // Stands and beds that changed, came or went since the run before.
  const changed = new Set(
    previous && [
      ...changedIds(previous.standById, standById),
      ...changedIds(previous.bedOutlines, bedOutlines),
    ],
  );
  const { byParent, pairs, fresh } = isolationPairs(
    stands,
    book,
    previous && { byParent: previous.pairsByParent, changed },
  );
  const input = {
    plan,
    layout,
    book,
    stands,
    standById,
    bedOutlines,
    pairs,
    freshPairs: fresh,
    changedStands: previous ? stands.filter((stand) => changed.has(stand.id)) : stands,
    isUnchanged: (id: string) => previous !== undefined && !changed.has(id),
  };
  const byCheck = new Map<string, readonly Finding[]>();
  for (const check of allChecks) {
    const found = check.run({ ...input, previous: previous?.byCheck.get(check.name) ?? [] });
    byCheck.set(
      check.name,
      [...found].sort((a, b) => compareText(a.id, b.id)),
    );
  }
  const all = [...byCheck.values()]
    .flat()
    .sort((a, b) => SEVERITY_ORDER[a.severity] - SEVERITY_ORDER[b.severity]);
  const isAccepted = acceptance(plan, layout);
  return {
    findings: all.filter((finding) => !isAccepted(finding)),
    accepted: all.filter(isAccepted),
    pairs,
    pairsByParent: byParent,
    stands,
    standById,
    bedOutlines,
    byCheck,
  };
}

function resolveBeds(
  beds: readonly Bed[],
  previous?: ReadonlyMap<string, BedOutline>,
): ReadonlyMap<string, BedOutline> {
  return new Map(
    beds.map((bed) => {
      const before = previous?.get(bed.id);
      return [bed.id, before?.bed === bed ? before : { bed, outline: outlineOf(bed.outline) }];
    }),
  );
}

/** What one check found, accepted or not, in the order of ids. */
export function foundBy<F extends FindingBase>(
  { byCheck }: Pick<CheckResult, "byCheck">,
  check: Check<F>,
): readonly F[] {
  return (byCheck.get(check.name) ?? []) as readonly FindingBase[] as readonly F[];
}

/** How many findings of each severity. */
export function countBySeverity(findings: readonly Finding[]): Readonly<Record<Severity, number>> {
  const counts = { conflict: 0, caution: 0, unknown: 0 };
  for (const finding of findings) counts[finding.severity] += 1;
  return counts;
}
