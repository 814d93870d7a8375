/**
 * A run carried forward where a few plantings, beds or surroundings changed and none came, went or
 * changed its place in the plan: everything is brought up to date for those alone, so that it costs
 * what they touch. The result equals a fresh run. See docs/decisions/017-carried-runs.md.
 */
import type { CropBook } from "../kinds/crop-book.ts";
import { outlineOf } from "../geometry/outline.ts";
import {
  type ListParts,
  partsOf,
  placeById,
  placesApart,
  placesDiffering,
} from "../lists/changed-list.ts";
import { Pages } from "../lists/pages.ts";
import { PlacedMap, placesById } from "../lists/placed-map.ts";
import type { Bed, Layout, Plan, Planting } from "../model/plan.ts";
import {
  type ReachIndex,
  changedReachIndex,
  groupNear,
  itemsNear,
  reachIndexOf,
} from "../nearness/reach-index.ts";
import { changedPairLists } from "../nearness/changed-pairs.ts";
import { touchingPairs } from "../nearness/touching-pairs.ts";
import type { BedOutline, ChangeInput, StandChange } from "./check.ts";
import { closeWays } from "./isolation.ts";
import type { IsolationPair } from "./isolation-pair.ts";
import { type Stand, movedStand, standAgain } from "./stand.ts";

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
  readonly bedOutlines: ReadonlyMap<string, BedOutline>;
  readonly pairsByParent: ReadonlyMap<string, readonly IsolationPair[]>;
}

/** The stands and pairs of a run carried forward. */
export interface CarriedRun extends Pick<CarriedFrom, "bedOutlines" | "pairsByParent"> {
  readonly stands: Pages<Stand>;
  readonly standById: ReadonlyMap<string, Stand>;
  readonly kept: Kept;
  readonly changed: ChangedPlaces;
}

/** Places in the lists of stands and of beds at which a run may differ from an earlier one. */
export interface ChangedPlaces {
  readonly stands: ReadonlySet<number>;
  readonly beds: ReadonlySet<number>;
}

/** Pairs by place of the seed parent, each list in the order of its sources; undefined: it is none. */
type PairLists = Pages<readonly IsolationPair[] | undefined>;

/** A run in pages, so that the next one is made for what differs alone. */
export interface Kept {
  readonly stands: Pages<Stand>;
  /** Places of the stands by id: the same in all runs that follow. */
  readonly placeOf: ReadonlyMap<string, number>;
  readonly pairs: PairLists;
  readonly beds: Pages<BedOutline>;
  readonly bedPlaceOf: ReadonlyMap<string, number>;
  readonly reach: ReachIndex;
  /** Whether any stand is stock seed, or was in a run before. */
  readonly holdsStock: boolean;
}

/** By what a run was of. A run carried forward has its own at once, a fresh one when it is carried on. */
const known = new WeakMap<RunOf, Kept>();

/** A run as the next one is carried forward from it, for whoever asks what is near a few things. */
export function keptOf(run: CarriedFrom): Kept {
  const found = known.get(run.of);
  if (found) return found;
  // Taken out only here: a list made when it is read would be made for every run carried on.
  const { of, stands, bedOutlines, pairsByParent } = run;
  const beds = [...bedOutlines.values()];
  const pages = Pages.of(stands);
  const kept = {
    stands: pages,
    placeOf: placeById(stands),
    pairs: pairLists(stands, pairsByParent),
    beds: Pages.of(beds),
    bedPlaceOf: placesById(beds.map(({ bed }) => bed)),
    reach: reachIndexOf(pages),
    holdsStock: stands.some(isStock),
  };
  known.set(of, kept);
  return kept;
}

/** A fresh run has them by place already, and makes them when they are read. */
function pairLists(stands: readonly Stand[], byParent: CarriedFrom["pairsByParent"]): PairLists {
  return byParent instanceof PlacedMap
    ? byParent.items
    : Pages.of(stands.map(({ id }) => byParent.get(id)));
}

const isStock = ({ level }: Stand) => level === "stock";

/** Null: too much changed, and the longer way round is taken. */
export function carriedRun(now: RunOf, from: CarriedFrom): CarriedRun | null {
  if (!isSameBut(now, from.of)) return null;
  const before = keptOf(from);
  const changes = changedStands(now, from.of, before);
  const changedBeds = changedBedOutlines(now.layout, from.of.layout, before);
  if (changes === null || changedBeds === null) return null;
  const stands = before.stands.with(
    new Map(changes.map(({ place, after }): [number, Stand] => [place, after])),
  );
  const places = changes.map(({ place }) => place);
  const reach = changedReachIndex(before.reach, stands, places);
  const { placeOf, bedPlaceOf } = before;
  const pairs = before.pairs.with(
    changedPairLists(changes, {
      stands,
      placeOf,
      reach,
      pairs: before.pairs,
      waysBetween: (one: Stand, other: Stand) => closeWays(one, other, now.book),
    }),
  );
  const beds = before.beds.with(changedBeds);
  const holdsStock = before.holdsStock || changes.some(({ after }) => isStock(after));
  const kept = { ...before, stands, pairs, beds, reach, holdsStock };
  known.set(now, kept);
  return {
    stands,
    standById: new PlacedMap(placeOf, stands),
    bedOutlines: new PlacedMap(bedPlaceOf, beds),
    pairsByParent: new PlacedMap(placeOf, pairs),
    kept,
    changed: { stands: new Set(places), beds: new Set(changedBeds.keys()) },
  };
}

/** All places at which a run may differ from the one before the last; null: too many to go by. */
export function changedSince(
  { stands, beds }: ChangedPlaces,
  before: ChangedPlaces,
  { length }: Pages<Stand>,
): ChangedPlaces | null {
  const all = new Set([...before.stands, ...stands]);
  if (all.size * MOST_CHANGED > length) return null;
  return { stands: all, beds: new Set([...before.beds, ...beds]) };
}

/** What the checks are told of a run that was carried forward from another in one step or many. */
export function changeInput(
  { plan, layout, book }: RunOf,
  now: Kept,
  before: Kept,
  changed: ChangedPlaces,
): ChangeInput {
  const changes = changesAt(changed.stands, now, before);
  const ids = new Set(changes.map(({ after }) => after.id));
  const changedBeds = [...changed.beds].flatMap((place) => {
    const bed = now.beds.at(place);
    return bed === undefined || bed === before.beds.at(place) ? [] : bed.bed.id;
  });
  return {
    plan,
    layout,
    book,
    standById: new PlacedMap(now.placeOf, now.stands),
    bedOutlines: new PlacedMap(now.bedPlaceOf, now.beds),
    changes,
    isMove: changes.every(isMoved),
    changedBeds,
    gonePairs: touchingPairs(before, ids),
    freshPairs: touchingPairs(now, ids),
    holdsStock: now.holdsStock,
    pairsOf: (id) => touchingPairs(now, new Set([id])),
    near: (stand, metres) => itemsNear(now.reach, now.stands, stand, metres),
    nearBefore: (stand, metres) => itemsNear(before.reach, before.stands, stand, metres),
    groupNear: (stand, metres) => groupNear(now.reach, now.stands, stand, metres),
    groupNearBefore: (stand, metres) => groupNear(before.reach, before.stands, stand, metres),
  };
}

/** In the order of the list. */
function changesAt(places: Iterable<number>, now: Kept, was: Kept): readonly StandChange[] {
  return [...places]
    .sort((a, b) => a - b)
    .flatMap((place) => {
      const [before, after] = [was.stands.at(place), now.stands.at(place)];
      return before && after && before !== after ? { place, before, after } : [];
    });
}

/** Whether nothing but where it lies differs. */
function isMoved({ before: { planting: was }, after: { planting: now } }: StandChange): boolean {
  return was !== null && now !== null && isSameBeside(OF_PLACE, was, now);
}

/** Parts of a plan in which a difference is looked at object by object. */
const LOOKED_INTO: ReadonlySet<string> = new Set(["layouts", "surroundings"]);
/** What of a planting says where it lies. */
const OF_PLACE: ReadonlySet<string> = new Set(["outline", "bed"]);

function isSameBut(now: RunOf, was: RunOf): boolean {
  if (now.book !== was.book || now.joined !== was.joined) return false;
  return now.layout.id === was.layout.id && isSameBeside(LOOKED_INTO, now.plan, was.plan);
}

/** Whether two objects hold the same values in all fields but some. */
function isSameBeside<T extends object>(some: ReadonlySet<string>, one: T, other: T): boolean {
  const isSame = (key: string) => some.has(key) || one[key as keyof T] === other[key as keyof T];
  return Object.keys(one).every(isSame) && Object.keys(other).every(isSame);
}

/** Of all stands one in so many may have changed; with more, all are looked at together. */
const MOST_CHANGED = 4;

/** Null where too many changed, or a thing came, went, moved within its list or became one of another kind. */
function changedStands(now: RunOf, was: RunOf, kept: Kept): readonly StandChange[] | null {
  const planted = changedPlantings(now, partsOf(was.layout, "plantings"), kept);
  const around = planted && changedSurroundings(now.plan, was.plan.surroundings, kept);
  return around && [...planted, ...around];
}

function changedPlantings(
  { plan, layout }: RunOf,
  before: ListParts<Planting>,
  { stands }: Kept,
): readonly StandChange[] | null {
  const parts = partsOf(layout, "plantings");
  if (parts.list.length !== before.list.length) return null;
  const changes: StandChange[] = [];
  const most = stands.length / MOST_CHANGED;
  for (const place of placesApart(parts, before)) {
    const planting = parts.changes.get(place) ?? parts.list[place];
    const was = before.changes.get(place) ?? before.list[place];
    if (planting === undefined || planting === was) continue;
    // Seen as soon as it is so: what was made until then is made once more.
    if (changes.length >= most) return null;
    const stand = stands.at(place);
    // Where a planting has no stand, those after it stand at other places in the list.
    if (!stand?.planting || stand.planting !== was) return null;
    if (planting.id !== stand.id || planting.variety !== stand.planting.variety) return null;
    const isMove = isSameBeside(OF_PLACE, stand.planting, planting);
    const after = isMove ? movedStand(stand, planting) : standAgain(stand, planting, plan);
    changes.push({ place, before: stand, after });
  }
  return changes;
}

function changedSurroundings(
  plan: Plan,
  before: Plan["surroundings"],
  { stands, placeOf }: Kept,
): readonly StandChange[] | null {
  const { surroundings } = plan;
  if (surroundings.length !== before.length) return null;
  const changes: StandChange[] = [];
  for (const index of placesDiffering(surroundings, before) ?? surroundings.keys()) {
    const [item, was] = [surroundings[index], before[index]];
    if (item === was) continue;
    if (item?.id !== was?.id || item?.what !== was?.what || item?.kind !== was?.kind) return null;
    if (item === undefined) continue;
    const place = placeOf.get(item.id);
    const stand = place === undefined ? undefined : stands.at(place);
    // A hedge or a building is no stand.
    if (place === undefined || !stand || stand.surrounding !== was) continue;
    changes.push({ place, before: stand, after: standAgain(stand, item, plan) });
  }
  return changes;
}

/** By place in the list of beds; null where one came, went or moved within the list. */
function changedBedOutlines(
  { beds }: Layout,
  { beds: before }: Layout,
  { bedPlaceOf }: Kept,
): ReadonlyMap<number, BedOutline> | null {
  if (beds.length !== before.length) return null;
  const changed = new Map<number, BedOutline>();
  for (const place of placesDiffering(beds, before) ?? beds.keys()) {
    const bed = beds[place] as Bed;
    if (bed === before[place]) continue;
    if (bed.id !== before[place]?.id || bedPlaceOf.get(bed.id) !== place) return null;
    changed.set(place, { bed, outline: outlineOf(bed.outline) });
  }
  return changed;
}
