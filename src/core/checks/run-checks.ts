/**
 * One path from plan to findings, for screen, paper and command line alike. Passing the result of
 * the run before carries forward whatever the edit did not touch; the result equals a fresh run.
 */
import type { CropBook } from "../kinds/crop-book.ts";
import { outlineOf } from "../geometry/outline.ts";
import { type ListPatch, itemOf, patchedList } from "../nearness/patched-list.ts";
import { pairsInOrder } from "../nearness/directed-pairs.ts";
import { changedIds } from "../model/changed-ids.ts";
import type { Bed, Layout, Plan } from "../model/plan.ts";
import { isGroundReckoned } from "./ground-checks.ts";
import { isSeedReckoned } from "./seed-lots.ts";
import { acceptance } from "./acceptance.ts";
import { type Finding, allChecks } from "./all-checks.ts";
import type { BedOutline, Check, CheckInput } from "./check.ts";
import { type FindingBase, type Severity, compareText } from "./finding.ts";
import { type CarriedRun, type RunOf, carriedRun } from "./carried-run.ts";
import { isolationPairs } from "./isolation.ts";
import { type IsolationPair, unorderedPairs } from "./isolation-pair.ts";
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
  readonly byCheck: ReadonlyMap<string, FoundLists>;
  /** What it is the result of. */
  readonly of: RunOf;
}

/** Findings of one check: conflicts, cautions, unknowns, each list in the order of ids. */
type FoundLists = readonly (readonly Finding[])[];

const SEVERITIES: readonly Severity[] = ["conflict", "caution", "unknown"];

export function runChecks(
  plan: Plan,
  layout: Layout,
  book: CropBook,
  previous?: CheckResult,
): CheckResult {
  const now = { plan, layout, book, joined: `${isSeedReckoned()} ${isGroundReckoned()}` };
  const carried = previous && carriedRun(now, previous);
  if (carried) return carriedResult(now, carried, previous);
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
    ...now,
    stands,
    standById,
    bedOutlines,
    pairs,
    freshWays: fresh,
    changedStands: previous ? stands.filter((stand) => changed.has(stand.id)) : stands,
    isUnchanged: (id: string) => previous !== undefined && !changed.has(id),
  };
  const byCheck = new Map<string, FoundLists>();
  for (const check of allChecks) {
    const before = previous?.byCheck.get(check.name);
    byCheck.set(check.name, listsOf(check.run({ ...input, previous: before?.flat() ?? [] })));
  }
  const parts = { pairs, pairsByParent: byParent, stands, standById, bedOutlines, byCheck };
  return { ...parts, of: now, ...inOrder(now, byCheck) };
}

/** Brings each check up to date for what changed; those that cannot be are run anew. */
function carriedResult(now: RunOf, carried: CarriedRun, previous: CheckResult): CheckResult {
  const { stands, standById, bedOutlines, pairsByParent, input, isMove } = carried;
  const changedStands = input.changes.map(({ after }) => after);
  const changed = new Set([...changedStands.map(({ id }) => id), ...input.changedBeds]);
  let pairs: readonly IsolationPair[] | null = null;
  const allPairs = () => (pairs ??= pairsInOrder(stands, pairsByParent));
  const whole = (before: FoundLists): CheckInput<Finding> => ({
    ...input,
    changedStands,
    isUnchanged: (id) => !changed.has(id),
    previous: before.flat(),
    // Few checks that are run anew read them.
    get pairs() {
      return allPairs();
    },
    get freshWays() {
      return [...unorderedPairs(input.freshPairs).values()];
    },
  });
  const byCheck = new Map<string, FoundLists>();
  for (const check of allChecks) {
    const before = previous.byCheck.get(check.name) ?? NOTHING_FOUND;
    byCheck.set(check.name, foundNow(check, before));
  }
  return {
    pairsByParent,
    stands,
    standById,
    bedOutlines,
    byCheck,
    of: now,
    ...inOrder(now, byCheck),
    // Made when read: a way out is judged by its findings alone.
    get pairs() {
      return allPairs();
    },
  };

  function foundNow(check: Check<Finding>, before: FoundLists): FoundLists {
    if (isMove && check.ignoresPlace === true) return before;
    if (check.patch) return patchedLists(before, check.patch(input));
    return listsOf(check.run(whole(before)));
  }
}

const NOTHING_FOUND: FoundLists = [[], [], []];

/** Findings by severity, each list in the order of ids. */
function listsOf(found: readonly Finding[]): FoundLists {
  if (found.length === 0) return NOTHING_FOUND;
  // Texts by themselves are put in code-unit order many times faster than by a comparing function.
  const byId = new Map(found.map((finding) => [finding.id, finding]));
  const ordered = [...byId.keys()].sort().map((id) => byId.get(id) as Finding);
  return SEVERITIES.map((severity) => ordered.filter((each) => each.severity === severity));
}

function patchedLists(lists: FoundLists, { gone, found }: ListPatch<Finding>): FoundLists {
  const ids = [...gone];
  if (ids.length === 0 && found.length === 0) return lists;
  return SEVERITIES.map((severity, place) =>
    patchedList(lists[place] ?? [], {
      gone: ids,
      found: found.filter((each) => each.severity === severity),
    }),
  );
}

/** All findings in order, less those accepted, which stand apart. */
function inOrder(
  { plan, layout }: RunOf,
  byCheck: CheckResult["byCheck"],
): Pick<CheckResult, "findings" | "accepted"> {
  const lists = SEVERITIES.flatMap((_, place) =>
    [...byCheck.values()].map((found) => found[place] ?? []),
  );
  if (plan.accepted.length === 0) return { findings: joined(lists), accepted: [] };
  const isAccepted = acceptance(plan, layout);
  const named = new Set(plan.accepted.map(({ finding }) => finding));
  const accepted = lists.map((list) =>
    list.length === 0
      ? list
      : [...named].flatMap((id) => itemOf(list, id) ?? []).filter(isAccepted),
  );
  return {
    findings: joined(
      lists.map((list, place) =>
        patchedList(list, { gone: (accepted[place] ?? []).map(({ id }) => id), found: [] }),
      ),
    ),
    accepted: joined(accepted.map((list) => [...list].sort((a, b) => compareText(a.id, b.id)))),
  };
}

function joined(lists: readonly (readonly Finding[])[]): readonly Finding[] {
  return ([] as Finding[]).concat(...lists);
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
  const found = (byCheck.get(check.name) ?? []).flat() as readonly FindingBase[] as readonly F[];
  return found.toSorted((a, b) => compareText(a.id, b.id));
}

/** How many findings of each severity. */
export function countBySeverity(findings: readonly Finding[]): Readonly<Record<Severity, number>> {
  const counts = { conflict: 0, caution: 0, unknown: 0 };
  for (const finding of findings) counts[finding.severity] += 1;
  return counts;
}
