/**
 * One path from plan to findings, for screen, paper and command line alike. Passing the result of
 * the run before carries forward whatever the edit did not touch; the result equals a fresh run.
 */
import type { CropBook } from "../kinds/crop-book.ts";
import { outlineOf } from "../geometry/outline.ts";
import { IdPages, type ListPatch } from "../lists/id-pages.ts";
import { Pages } from "../lists/pages.ts";
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
import { type IsolationRun, isolationPairs } from "./isolation.ts";
import { type IsolationPair, judgedAmong } from "./isolation-pair.ts";
import { type Stand, resolveStands } from "./stand.ts";

export interface CheckResult {
  /** Conflicts first, then cautions, then unknowns; within one, in the order of the checks. */
  readonly findings: readonly Finding[];
  /** How many of each severity; the list of them is not made for it. */
  readonly counts: Readonly<Record<Severity, number>>;
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
type FoundLists = readonly IdPages<Finding>[];

const SEVERITIES: readonly Severity[] = ["conflict", "caution", "unknown"];

export function runChecks(
  plan: Plan,
  layout: Layout,
  book: CropBook,
  previous?: CheckResult,
): CheckResult {
  const now = { plan, layout, book, joined: `${isSeedReckoned()} ${isGroundReckoned()}` };
  const carried = previous && carriedRun(now, previous);
  if (carried) return carriedResult(now, carried, previous.byCheck);
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
  const isolation = isolationPairs(
    stands,
    book,
    previous && { byParent: previous.pairsByParent, changed },
  );
  const input = {
    ...now,
    stands,
    standById,
    bedOutlines,
    judged: isolation,
    changedStands: previous ? stands.filter((stand) => changed.has(stand.id)) : stands,
    isUnchanged: (id: string) => previous !== undefined && !changed.has(id),
  };
  const byCheck = new Map<string, FoundLists>();
  for (const check of allChecks) {
    const before = previous?.byCheck.get(check.name) ?? NOTHING_FOUND;
    byCheck.set(check.name, listsOf(check.run({ ...input, previous: allOf(before) })));
  }
  return resultOf({
    of: now,
    stands: Pages.of(stands),
    standById,
    bedOutlines,
    pairsByParent: isolation.byParent,
    pairs: pairsOfRun(isolation),
    byCheck,
  });
}

/** Brings each check up to date for what changed; those that cannot be are run anew. */
function carriedResult(
  now: RunOf,
  carried: CarriedRun,
  previous: CheckResult["byCheck"],
): CheckResult {
  const { stands, standById, bedOutlines, pairsByParent, input, isMove } = carried;
  const pairs = pairsWhenRead(stands, pairsByParent);
  const byCheck = new Map<string, FoundLists>();
  for (const check of allChecks) {
    const before = previous.get(check.name) ?? NOTHING_FOUND;
    byCheck.set(check.name, foundNow(check, before));
  }
  return resultOf({ of: now, stands, standById, bedOutlines, pairsByParent, pairs, byCheck });

  function foundNow(check: Check<Finding>, before: FoundLists): FoundLists {
    if (isMove && check.ignoresPlace === true) return before;
    if (check.patch) return patchedLists(before, check.patch(input));
    return listsOf(check.run(wholeInput(carried, before, pairs)));
  }
}

/** What a check that is run anew is given; few read all of it, so lists are made when they are read. */
function wholeInput(
  { input, stands }: CarriedRun,
  before: FoundLists,
  pairs: () => readonly IsolationPair[],
): CheckInput<Finding> {
  const changedStands = input.changes.map(({ after }) => after);
  const changed = new Set([...changedStands.map(({ id }) => id), ...input.changedBeds]);
  return {
    ...input,
    changedStands,
    isUnchanged: (id) => !changed.has(id),
    get stands() {
      return stands.all;
    },
    get judged() {
      return judgedAmong(pairs(), input.freshPairs);
    },
    get previous() {
      return allOf(before);
    },
  };
}

const NOTHING_FOUND: FoundLists = SEVERITIES.map(() => IdPages.of<Finding>([]));

const allOf = (found: FoundLists): readonly Finding[] => found.flatMap(({ all }) => all);

/** Findings by severity, each list in the order of ids. */
function listsOf(found: readonly Finding[]): FoundLists {
  if (found.length === 0) return NOTHING_FOUND;
  // Texts by themselves are put in code-unit order many times faster than by a comparing function.
  const byId = new Map(found.map((finding) => [finding.id, finding]));
  const ordered = [...byId.keys()].sort().map((id) => byId.get(id) as Finding);
  return SEVERITIES.map((severity) =>
    IdPages.of(ordered.filter((each) => each.severity === severity)),
  );
}

function patchedLists(lists: FoundLists, { gone, found }: ListPatch<Finding>): FoundLists {
  const ids = [...gone];
  if (ids.length === 0 && found.length === 0) return lists;
  return lists.map((list, place) =>
    list.patched({
      gone: ids,
      found: found.filter(({ severity }) => severity === SEVERITIES[place]),
    }),
  );
}

/** A result before the lists are made that not every reader asks for. */
interface Run extends Omit<CheckResult, "findings" | "counts" | "accepted" | "pairs" | "stands"> {
  readonly stands: Pages<Stand>;
  readonly pairs: () => readonly IsolationPair[];
}

/**
 * A result whose lists are made when they are read: a way out that is tried is judged by its
 * findings alone, and one of many moves by none. It holds on to nothing of the run before.
 */
function resultOf({ stands, pairs, ...run }: Run): CheckResult {
  const { lists, accepted } = lessAccepted(run.of, run.byCheck);
  const findings = madeOnce(() => ([] as Finding[]).concat(...lists.map(({ all }) => all)));
  const counts = madeOnce(() => countsOf(lists));
  return {
    ...run,
    accepted,
    get findings() {
      return findings();
    },
    get counts() {
      return counts();
    },
    get stands() {
      return stands.all;
    },
    get pairs() {
      return pairs();
    },
  };
}

// Functions of their own: one written where a run is made would hold on to the run before.
const pairsOfRun = (run: IsolationRun) => () => run.pairs;
const pairsWhenRead = (stands: Pages<Stand>, byParent: CheckResult["pairsByParent"]) =>
  madeOnce(() => pairsInOrder(stands.all, byParent));

function madeOnce<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => (made ??= { value: make() }).value;
}

/** @param lists as many for each severity, one severity after the other */
function countsOf(lists: FoundLists): CheckResult["counts"] {
  const counts = { conflict: 0, caution: 0, unknown: 0 };
  const each = lists.length / SEVERITIES.length;
  for (const [place, { size }] of lists.entries()) {
    counts[SEVERITIES[Math.floor(place / each)] as Severity] += size;
  }
  return counts;
}

/** All findings in order, less those accepted, which stand apart. */
function lessAccepted(
  { plan, layout }: RunOf,
  byCheck: CheckResult["byCheck"],
): { readonly lists: FoundLists; readonly accepted: readonly Finding[] } {
  const lists = SEVERITIES.flatMap((_, place) =>
    [...byCheck.values()].flatMap((found) => found[place] ?? []),
  );
  if (plan.accepted.length === 0) return { lists, accepted: [] };
  const isAccepted = acceptance(plan, layout);
  const named = [...new Set(plan.accepted.map(({ finding }) => finding))].sort(compareText);
  const accepted = lists.map((list) =>
    named.flatMap((id) => list.get(id) ?? []).filter(isAccepted),
  );
  return {
    lists: lists.map((list, place) =>
      list.patched({ gone: (accepted[place] ?? []).map(({ id }) => id), found: [] }),
    ),
    accepted: accepted.flat(),
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
  const found = allOf(byCheck.get(check.name) ?? []) as readonly FindingBase[] as readonly F[];
  return found.toSorted((a, b) => compareText(a.id, b.id));
}

/** How many findings of each severity. */
export function countBySeverity(findings: readonly Finding[]): Readonly<Record<Severity, number>> {
  const counts = { conflict: 0, caution: 0, unknown: 0 };
  for (const finding of findings) counts[finding.severity] += 1;
  return counts;
}
