/**
 * A run carried forward where a few plantings, beds or surroundings changed and none came, went or
 * changed its place in the plan: everything is brought up to date for those alone, so that it costs
 * what they touch. The result equals a fresh run. See docs/decisions/017-carried-runs.md.
 */
import type { CropBook } from "../kinds/crop-book.ts";
import { outlineOf } from "../geometry/outline.ts";
import type { Layout, Plan, Planting } from "../model/plan.ts";
import { patchedMap } from "../nearness/patched-map.ts";
import {
  type ReachIndex,
  changedReachIndex,
  itemsNear,
  reachIndexOf,
  reachingItems,
} from "../nearness/reach-index.ts";
import type { BedOutline, ChangeInput, StandChange } from "./check.ts";
import { closePairs, isolationPair } from "./isolation.ts";
import type { IsolationPair } from "./isolation-pair.ts";
import { type Stand, standAgain } from "./stand.ts";

/** What a run was made of. */
export interface RunOf {
  readonly plan: Plan;
  readonly layout: Layout;
  readonly book: CropBook;
  /** Which of the parts that are joined later were there. */
  readonly joined: string;
}

/** What of a run the next one is carried forward from. */
export interface CarriedFrom {
  readonly of: RunOf;
  readonly stands: readonly Stand[];
  readonly standById: ReadonlyMap<string, Stand>;
  readonly bedOutlines: ReadonlyMap<string, BedOutline>;
  readonly pairsByParent: ReadonlyMap<string, readonly IsolationPair[]>;
}

/** The stands and pairs of a run carried forward, and what changed for the checks. */
export interface CarriedRun extends Omit<CarriedFrom, "of"> {
  readonly input: ChangeInput;
  /** Whether only places differ: outlines, and the beds plantings are in. */
  readonly isMove: boolean;
}

/** Null: too much changed, and the longer way round is taken. */
export function carriedRun(now: RunOf, from: CarriedFrom): CarriedRun | null {
  if (!isSameBut(now, from.of)) return null;
  const changes = changedStands(now, from);
  const beds = changedBeds(now, from);
  if (changes === null || beds === null) return null;
  const stands = from.stands.slice();
  for (const { place, after } of changes) stands[place] = after;
  const reached = reachIndexOf(from.stands);
  const index = changedReachIndex(
    reached,
    stands,
    changes.map(({ place }) => place),
  );
  const pairs = changedPairs(changes, { stands, index, book: now.book }, from.pairsByParent);
  const standById = patchedMap(
    from.standById,
    new Map(changes.map((change) => [change.after.id, change.after])),
  );
  const bedOutlines = patchedMap(from.bedOutlines, new Map(beds.map((bed) => [bed.bed.id, bed])));
  return {
    stands,
    standById,
    bedOutlines,
    pairsByParent: pairs.byParent,
    isMove: changes.every(isMoved),
    input: {
      ...now,
      stands,
      standById,
      bedOutlines,
      changes,
      changedBeds: beds.map(({ bed }) => bed.id),
      gonePairs: pairs.gone,
      freshPairs: pairs.fresh,
      pairsOf: (id) => pairsTouching(id, stands, index, pairs.byParent),
      near: (stand, metres) => itemsNear(index, stands, stand, metres),
      nearBefore: (stand, metres) => itemsNear(reached, from.stands, stand, metres),
    },
  };
}

/** Parts of a plan in which a difference is looked at object by object. */
const LOOKED_INTO: ReadonlySet<string> = new Set(["layouts", "surroundings"]);

function isSameBut(now: RunOf, was: RunOf): boolean {
  if (now.book !== was.book || now.joined !== was.joined) return false;
  if (now.layout.id !== was.layout.id) return false;
  const [a, b] = [now.plan, was.plan] as unknown as readonly Readonly<Record<string, unknown>>[];
  if (a === undefined || b === undefined) return false;
  return [...new Set([...Object.keys(a), ...Object.keys(b)])].every(
    (key) => LOOKED_INTO.has(key) || a[key] === b[key],
  );
}

/** Of all stands one in so many may have changed; with more, all are looked at together. */
const MOST_CHANGED = 4;

/** Null where too many changed, or a thing came, went, moved within its list or became one of another kind. */
function changedStands(
  { plan, layout }: RunOf,
  { of, stands }: CarriedFrom,
): readonly StandChange[] | null {
  const changes: StandChange[] = [];
  const { plantings } = layout;
  const before = of.layout.plantings;
  if (plantings.length !== before.length) return null;
  const most = stands.length / MOST_CHANGED;
  for (let place = 0; place < plantings.length; place += 1) {
    if (plantings[place] === before[place]) continue;
    // Seen as soon as it is so: what was made until then is made once more.
    if (changes.length >= most) return null;
    const planting = plantings[place] as Planting;
    const stand = stands[place];
    // Where a planting has no stand, those after it stand at other places in the list.
    if (!stand?.planting || stand.planting !== before[place]) return null;
    if (!isSamePlanting(planting, stand.planting)) return null;
    changes.push({ place, before: stand, after: standAgain(stand, planting, plan) });
  }
  const around = plan.surroundings;
  if (around === of.plan.surroundings) return changes;
  if (around.length !== of.plan.surroundings.length) return null;
  const places = new Map(stands.map((stand, place) => [stand.surrounding, place]));
  for (const [index, item] of around.entries()) {
    const was = of.plan.surroundings[index];
    if (item === was) continue;
    if (was === undefined || item.id !== was.id || item.what !== was.what) return null;
    if (item.kind !== was.kind) return null;
    const place = places.get(was);
    const stand = place === undefined ? undefined : stands[place];
    if (place === undefined || stand === undefined) continue;
    changes.push({ place, before: stand, after: standAgain(stand, item, plan) });
  }
  return changes;
}

function isSamePlanting(now: Planting, was: Planting): boolean {
  return now.id === was.id && now.variety === was.variety;
}

function changedBeds({ layout }: RunOf, { of, bedOutlines }: CarriedFrom) {
  const { beds } = layout;
  if (beds === of.layout.beds) return [];
  if (beds.length !== of.layout.beds.length) return null;
  const changed: BedOutline[] = [];
  for (const [index, bed] of beds.entries()) {
    const was = of.layout.beds[index];
    if (bed === was) continue;
    if (bed.id !== was?.id || !bedOutlines.has(bed.id)) return null;
    changed.push({ bed, outline: outlineOf(bed.outline) });
  }
  return changed;
}

/** Whether nothing but where it lies differs. */
function isMoved({ before, after }: StandChange): boolean {
  const [a, b] = [before.planting, after.planting] as readonly (Record<string, unknown> | null)[];
  if (!a || !b) return false;
  return [...new Set([...Object.keys(a), ...Object.keys(b)])].every(
    (key) => key === "outline" || key === "bed" || a[key] === b[key],
  );
}

interface PairsNow {
  readonly stands: readonly Stand[];
  readonly index: ReachIndex;
  readonly book: CropBook;
}

/** The pairs of changed stands judged anew: of each as seed parent, and of each as source. */
function changedPairs(
  changes: readonly StandChange[],
  { stands, index, book }: PairsNow,
  before: CarriedFrom["pairsByParent"],
) {
  const changed = new Set(changes.map(({ after }) => after.id));
  const lists = new Map<string, readonly IsolationPair[]>();
  const gone: IsolationPair[] = [];
  const fresh: IsolationPair[] = [];
  const placeOf = (pair: IsolationPair) => index.placeOf.get(pair.pollenSource) ?? 0;
  for (const { before: was, after } of changes) {
    gone.push(...(before.get(after.id) ?? []));
    if (after.isSeedParent) {
      const sources = sourcesFor(after, stands, index);
      const found = closePairs(after, sources, book);
      lists.set(after.id, found);
      fresh.push(...found);
    } else if (before.has(after.id)) lists.set(after.id, []);
    const parents = new Set([
      ...reachingItems(index, stands, was),
      ...reachingItems(index, stands, after),
    ]);
    for (const parent of parents) {
      if (changed.has(parent.id)) continue;
      const list = lists.get(parent.id) ?? before.get(parent.id) ?? [];
      const old = list.find(({ pollenSource }) => pollenSource === after.id);
      const judged = isolationPair(parent, after, book);
      const pair = judged?.standing === "distance" ? null : judged;
      if (!old && !pair) continue;
      const kept = old ? list.filter((each) => each !== old) : list;
      if (old) gone.push(old);
      if (pair) fresh.push(pair);
      lists.set(parent.id, pair ? inPlace(kept, pair, placeOf) : kept);
    }
  }
  return { byParent: withLists(before, lists), gone, fresh };
}

function sourcesFor(parent: Stand, stands: readonly Stand[], index: ReachIndex): readonly Stand[] {
  return itemsNear(index, stands, parent, parent.reachM).filter(
    ({ kind }) => kind.group === parent.kind.group,
  );
}

/** A list in the order of its sources with a pair more. */
function inPlace(
  list: readonly IsolationPair[],
  pair: IsolationPair,
  placeOf: (pair: IsolationPair) => number,
): readonly IsolationPair[] {
  const own = placeOf(pair);
  const after = list.findIndex((each) => placeOf(each) > own);
  return after < 0 ? [...list, pair] : list.toSpliced(after, 0, pair);
}

function withLists(
  before: CarriedFrom["pairsByParent"],
  lists: ReadonlyMap<string, readonly IsolationPair[]>,
): CarriedFrom["pairsByParent"] {
  const isNew = [...lists.keys()].some((id) => !before.has(id));
  return isNew ? new Map([...before, ...lists]) : patchedMap(before, lists);
}

function pairsTouching(
  id: string,
  stands: readonly Stand[],
  index: ReachIndex,
  byParent: CarriedFrom["pairsByParent"],
): readonly IsolationPair[] {
  const place = index.placeOf.get(id);
  const stand = place === undefined ? undefined : stands[place];
  if (place === undefined || !stand) return [];
  const found = reachingItems(index, stands, stand)
    .filter((parent) => parent !== stand)
    .map((parent) => ({
      at: index.placeOf.get(parent.id) ?? 0,
      pairs: (byParent.get(parent.id) ?? []).filter(({ pollenSource }) => pollenSource === id),
    }));
  return [...found, { at: place, pairs: byParent.get(id) ?? [] }]
    .sort((a, b) => a.at - b.at)
    .flatMap(({ pairs }) => pairs);
}
