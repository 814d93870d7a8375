/**
 * One path from plan to findings, for screen, paper and command line alike. Passing the result of
 * the run before carries forward whatever the edit did not touch; the result equals a fresh run.
 */
import type { CropBook } from "../kinds/crop-book.ts";
import {
  type GradedLists,
  allOf,
  countsOf,
  gradedLists,
  patchedLists,
} from "../lists/graded-lists.ts";
import { IdPages } from "../lists/id-pages.ts";
import { placeById } from "../lists/changed-list.ts";
import { Pages } from "../lists/pages.ts";
import { PlacedMap } from "../lists/placed-map.ts";
import { idRanks } from "../nearness/id-order.ts";
import { pairsInOrder } from "../nearness/directed-pairs.ts";
import { changedIds } from "../model/changed-ids.ts";
import type { Layout, Plan } from "../model/plan.ts";
import { isGroundReckoned } from "./ground-checks.ts";
import { isSeedReckoned } from "./seed-lots.ts";
import { acceptance } from "./acceptance.ts";
import { type Finding, allChecks } from "./all-checks.ts";
import {
  type BedOutline,
  type ChangeInput,
  type Check,
  type CheckInput,
  resolveBeds,
} from "./check.ts";
import { type FindingBase, type Severity, compareText } from "./finding.ts";
import {
  type CarriedRun,
  type ChangedPlaces,
  type Kept,
  type RunOf,
  carriedRun,
  changeInput,
  changedSince,
  keptOf,
} from "./carried-run.ts";
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
type FoundLists = GradedLists<Finding>;

const SEVERITIES: readonly Severity[] = ["conflict", "caution", "unknown"];

export function runChecks(
  plan: Plan,
  layout: Layout,
  book: CropBook,
  previous?: CheckResult,
): CheckResult {
  const now = { plan, layout, book, joined: `${isSeedReckoned()} ${isGroundReckoned()}` };
  const carried = previous && carriedRun(now, previous);
  if (carried) return carriedResult(now, carried, untoldAfter(previous, carried));
  const stands = resolveStands(plan, layout, book, previous?.standById);
  const listed = Pages.of(stands);
  const standById = byIdWhenRead(listed);
  const bedOutlines = resolveBeds(layout.beds, previous?.bedOutlines);
  // Stands and beds that changed, came or went since the run before.
  const changed = new Set(
    previous && [
      ...changedIds(previous.standById, standById),
      ...changedIds(previous.bedOutlines, bedOutlines),
    ],
  );
  const earlier = previous && { byParent: previous.pairsByParent, changed };
  const isolation = isolationPairs(stands, book, earlier);
  const input = {
    ...now,
    stands,
    standById,
    bedOutlines,
    judged: isolation,
    ranks: ranksWhenRead(stands),
    changedStands: previous ? stands.filter((stand) => changed.has(stand.id)) : stands,
    isUnchanged: (id: string) => previous !== undefined && !changed.has(id),
  };
  const byCheck = new Map<string, FoundLists>();
  for (const check of allChecks) {
    const before = previous?.byCheck.get(check.name);
    const own = { ...input, previous: before ? allOf(before) : [] };
    const later = previous ? null : check.later?.(own);
    byCheck.set(check.name, later ?? listsOf(check.run(own)));
  }
  return resultOf({
    of: now,
    stands: listed,
    standById,
    bedOutlines,
    pairsByParent: isolation.byParent,
    pairs: pairsOfRun(isolation),
    byCheck: always(byCheck),
  });
}

/** The findings of an earlier run, and where a run that nobody has read may differ from it. */
interface Untold {
  readonly kept: Kept;
  readonly byCheck: CheckResult["byCheck"];
  readonly changed: ChangedPlaces;
}

/** By what a run was of, until its findings are read. */
const untold = new WeakMap<RunOf, Untold>();

/** Goes on from the last run whose findings were read: of those between none is held on to. */
function untoldAfter(previous: CheckResult, { stands, changed }: CarriedRun): Untold {
  const before = untold.get(previous.of);
  const since = before && changedSince(changed, before.changed, stands);
  if (before && since) return { ...before, changed: since };
  return { kept: keptOf(previous), byCheck: previous.byCheck, changed };
}

/** At how many places a run differs from the last whose findings were read; 0: its own were. */
export function changesUnread({ of }: CheckResult): number {
  return untold.get(of)?.changed.stands.size ?? 0;
}

function carriedResult(now: RunOf, carried: CarriedRun, from: Untold): CheckResult {
  const { stands, standById, bedOutlines, pairsByParent } = carried;
  untold.set(now, from);
  const pairs = pairsWhenRead(stands, pairsByParent);
  const byCheck = madeOnce(() => {
    untold.delete(now);
    return broughtUp(now, carried, from, pairs);
  });
  return resultOf({ of: now, stands, standById, bedOutlines, pairsByParent, pairs, byCheck });
}

/** Brings each check up to date for what changed; those that cannot be are run anew. */
function broughtUp(
  now: RunOf,
  { kept, stands }: CarriedRun,
  from: Untold,
  pairs: () => readonly IsolationPair[],
): CheckResult["byCheck"] {
  const input = changeInput(now, kept, from.kept, from.changed);
  const found = (check: Check<Finding>, before: FoundLists): FoundLists => {
    if (input.isMove && check.ignoresPlace === true) return before;
    if (check.patch) return patchedLists(before, check.patch(input), SEVERITIES);
    return listsOf(check.run(wholeInput(input, stands, before, pairs)));
  };
  return new Map(
    allChecks.map((check) => [
      check.name,
      found(check, from.byCheck.get(check.name) ?? NOTHING_FOUND),
    ]),
  );
}

/** What a check that is run anew is given; few read all of it, so lists are made when they are read. */
function wholeInput(
  input: ChangeInput,
  stands: Pages<Stand>,
  before: FoundLists,
  pairs: () => readonly IsolationPair[],
): CheckInput<Finding> {
  const changedStands = input.changes.map(({ after }) => after);
  const changed = new Set([...changedStands.map(({ id }) => id), ...input.changedBeds]);
  return {
    ...input,
    changedStands,
    ranks: () => null,
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

const listsOf = (found: readonly Finding[]): FoundLists =>
  found.length === 0 ? NOTHING_FOUND : gradedLists(found, SEVERITIES);

/** A result before the lists are made that not every reader asks for. */
interface Run extends Pick<CheckResult, "standById" | "bedOutlines" | "pairsByParent" | "of"> {
  readonly stands: Pages<Stand>;
  readonly pairs: () => readonly IsolationPair[];
  readonly byCheck: () => CheckResult["byCheck"];
}

/**
 * A result whose lists are made when they are read: a way out that is tried is judged by its
 * findings alone, and one of many moves by none.
 */
function resultOf({ stands, pairs, byCheck, ...run }: Run): CheckResult {
  const told = madeOnce(() => lessAccepted(run.of, byCheck()));
  const findings = madeOnce(() => ([] as Finding[]).concat(...told().lists.map(({ all }) => all)));
  const counts = madeOnce(() => countsOf(told().lists, SEVERITIES));
  return {
    ...run,
    get byCheck() {
      return byCheck();
    },
    get accepted() {
      return run.of.plan.accepted.length === 0 ? NONE_ACCEPTED : told().accepted;
    },
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

const NONE_ACCEPTED: readonly Finding[] = [];

// Functions of their own: one written where a run is made would hold on to the run before.
const always =
  <T>(value: T) =>
  () =>
    value;
const pairsOfRun = (run: IsolationRun) => () => run.pairs;
const byIdWhenRead = (stands: Pages<Stand>) => new PlacedMap(() => placeById(stands.all), stands);
const ranksWhenRead = (stands: readonly Stand[]) => madeOnce(() => idRanks(stands));
const pairsWhenRead = (stands: Pages<Stand>, byParent: CheckResult["pairsByParent"]) =>
  madeOnce(() => pairsInOrder(stands.all, byParent));

/** Lets go of what it is made from. */
function madeOnce<T>(make: () => T): () => T {
  let toMake: (() => T) | null = make;
  let made: T;
  return () => {
    if (toMake) {
      made = toMake();
      toMake = null;
    }
    return made;
  };
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

/** What one check found, accepted or not, in the order of ids. */
export function foundBy<F extends FindingBase>(
  { byCheck }: Pick<CheckResult, "byCheck">,
  check: Check<F>,
): readonly F[] {
  const found = allOf(byCheck.get(check.name) ?? []) as readonly FindingBase[] as readonly F[];
  return found.toSorted((a, b) => compareText(a.id, b.id));
}
