/**
 * The isolation rule. For every seed parent and every pollen source of a crossing group it can
 * cross with: cleared by distance, else by time, else by cover, else a conflict - or unknown when
 * a figure or a date is missing. The seed parent decides how far is far enough, so a pair can be
 * at risk one way only.
 *
 * Candidates may come from a spatial index; the verdict always from the measured distance.
 */
import { isSureBasis } from "../calendar/basis.ts";
import { bloomParting, daysBetween, daysTogether, openDays } from "../calendar/compare-bloom.ts";
import { isDatedHere } from "../calendar/season-reach.ts";
import type { Kind, PollenCarrier, Relation } from "../kinds/crop.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import { boundsGap } from "../geometry/bounds.ts";
import { gapBetween } from "../geometry/gap.ts";
import type { Cover } from "../model/plan.ts";
import type { IsolationPair, Standing, TimeClear } from "./isolation-pair.ts";
import { groupStands, nearStands } from "../nearness/near-stands.ts";
import { type Stand, requirementFrom } from "./stand.ts";

/**
 * Distances short of the requirement by less than this pass: published figures are minima, and a
 * micrometre is rounding, not ground.
 */
export const DISTANCE_TOLERANCE_M = 1e-6;

export interface IsolationRun {
  /** Directed pairs closer than required, or not known to be far enough, by seed parent. */
  readonly byParent: ReadonlyMap<string, readonly IsolationPair[]>;
  /** The same in one list, in the order of the stands: seed parents first, then sources. */
  readonly pairs: readonly IsolationPair[];
  /** Those of them that were judged in this run rather than carried forward. */
  readonly fresh: readonly IsolationPair[];
}

/** What an earlier run left behind, and which stands are no longer what they were then. */
export interface CarriedForward {
  readonly byParent: ReadonlyMap<string, readonly IsolationPair[]>;
  /** Ids of stands changed, added or removed since. */
  readonly changed: ReadonlySet<string>;
}

/**
 * All directed pairs that distance does not clear. With an earlier run, only pairs that touch a
 * stand changed since are looked at again; the result equals a fresh run.
 */
export function isolationPairs(
  stands: readonly Stand[],
  book: CropBook,
  earlier?: CarriedForward,
): IsolationRun {
  return earlier ? carriedPairs(stands, book, earlier) : freshRun(stands, book);
}

function freshRun(stands: readonly Stand[], book: CropBook): IsolationRun {
  const byParent: PairsByParent = new Map();
  for (const group of groupStands(stands).values()) pairsOfGroup(group, book, byParent);
  const pairs = pairsInOrder(stands, byParent);
  return { byParent, pairs, fresh: pairs };
}

function carriedPairs(
  stands: readonly Stand[],
  book: CropBook,
  earlier: CarriedForward,
): IsolationRun {
  const byParent: PairsByParent = new Map();
  const fresh: IsolationPair[] = [];
  for (const group of groupStands(stands).values()) {
    const changed = group.filter(({ id }) => earlier.changed.has(id));
    if (changed.length === group.length) {
      pairsOfGroup(group, book, byParent);
      for (const pair of pairsInOrder(group, byParent)) fresh.push(pair);
      continue;
    }
    for (const parent of group) {
      if (!parent.isSeedParent) continue;
      const before = earlier.changed.has(parent.id) ? undefined : earlier.byParent.get(parent.id);
      const found = closePairs(parent, before ? changed : group, book);
      for (const pair of found) fresh.push(pair);
      const kept = before ? keptPairs(before, earlier.changed) : [];
      byParent.set(parent.id, kept.length === 0 ? found : [...kept, ...found]);
    }
    putInOrder(group, byParent);
  }
  return { byParent, pairs: pairsInOrder(stands, byParent), fresh };
}

type PairsByParent = Map<string, readonly IsolationPair[]>;

/** Adds the pairs of a whole crossing group, with the spatial index where the group is large. */
function pairsOfGroup(group: readonly Stand[], book: CropBook, byParent: PairsByParent): void {
  const index = nearStands(group);
  for (const place of index?.order ?? group.keys()) {
    const parent = group[place] as Stand;
    if (!parent.isSeedParent) continue;
    byParent.set(parent.id, closePairs(parent, index?.near(place) ?? group, book));
  }
}

/** The pairs of those stands that are seed parents, in the order of the stands. */
export function pairsInOrder(
  stands: readonly Stand[],
  byParent: ReadonlyMap<string, readonly IsolationPair[]>,
): readonly IsolationPair[] {
  const pairs: IsolationPair[] = [];
  for (const { id } of stands) for (const pair of byParent.get(id) ?? []) pairs.push(pair);
  return pairs;
}

/** Carried-forward lists in the order of the stands, as a fresh run makes them. */
function putInOrder(group: readonly Stand[], byParent: PairsByParent): void {
  const rank = new Map(group.map((stand, index) => [stand.id, index]));
  for (const { id } of group) {
    const pairs = byParent.get(id);
    if (pairs) byParent.set(id, inOrder(pairs, rank));
  }
}

/** The pairs whose source is unchanged; the same list when all are. */
function keptPairs(
  pairs: readonly IsolationPair[],
  changed: ReadonlySet<string>,
): readonly IsolationPair[] {
  const isStale = (pair: IsolationPair) => changed.has(pair.pollenSource);
  return pairs.some(isStale) ? pairs.filter((pair) => !isStale(pair)) : pairs;
}

/** The pairs by rank of their sources; the same list when they stand in order already. */
function inOrder(
  pairs: readonly IsolationPair[],
  rank: ReadonlyMap<string, number>,
): readonly IsolationPair[] {
  const rankOf = (pair: IsolationPair | undefined) => rank.get(pair?.pollenSource ?? "") ?? 0;
  return pairs.every((pair, index) => index === 0 || rankOf(pairs[index - 1]) < rankOf(pair))
    ? pairs
    : [...pairs].sort((a, b) => rankOf(a) - rankOf(b));
}

/** The pairs of one seed parent that distance does not clear, in the order of the sources. */
export function closePairs(
  parent: Stand,
  sources: readonly Stand[],
  book: CropBook,
): IsolationPair[] {
  const { bounds } = parent.outline;
  const pairs: IsolationPair[] = [];
  // Sources of one kind mostly follow each other: their relation is looked up once.
  let kind: Kind | null = null;
  let relation: Relation = "no";
  for (const source of sources) {
    if (boundsGap(bounds, source.outline.bounds) >= parent.reachM) continue;
    if (source.kind !== kind) {
      kind = source.kind;
      ({ relation } = book.relation(parent.kind, kind));
    }
    if (!canCross(parent, source, relation)) continue;
    const pair = judgedPair(parent, source, relation);
    if (pair.standing !== "distance") pairs.push(pair);
  }
  return pairs;
}

/** Plantings of one variety add up to one population, unless the grower keeps two lots apart. */
export function isSameLot(a: Stand, b: Stand): boolean {
  if (a === b) return true;
  if (a.varietyKey === null || a.varietyKey !== b.varietyKey) return false;
  return !(a.keepApart || b.keepApart);
}

/** Measures and judges one directed pair; null when the two never cross. */
export function isolationPair(parent: Stand, source: Stand, book: CropBook): IsolationPair | null {
  const { relation } = book.relation(parent.kind, source.kind);
  return canCross(parent, source, relation) ? judgedPair(parent, source, relation) : null;
}

function canCross(parent: Stand, source: Stand, relation: Relation): boolean {
  return (
    relation !== "no" && parent.isSeedParent && source.shedsPollen && !isSameLot(parent, source)
  );
}

function judgedPair(parent: Stand, source: Stand, relation: Relation): IsolationPair {
  const { distanceM, from, to } = gapBetween(parent.outline, source.outline);
  const requirement = requirementFrom(parent, source.kind);
  const isFarEnough =
    requirement !== null && distanceM >= requirement.metres - DISTANCE_TOLERANCE_M;
  // Beyond a laxer level's figure nothing is known where the level has none: not clear, not near.
  const isBeyondFloor = isFarEnough && requirement.isFloor === true;
  const isFar = isFarEnough && !isBeyondFloor;
  const { receives } = parent;
  const { sheds } = source;
  const overlap = receives && sheds ? daysTogether(receives, sheds) : null;
  const cleared = isFar ? "distance" : clearedOtherwise(parent, source);
  // Written out field by field: most of a whole-plan check is making these.
  return {
    seedParent: parent.id,
    pollenSource: source.id,
    distanceM,
    where: [from, to],
    requiredM: requirement?.metres ?? null,
    requirement,
    relation,
    overlapDays: overlap,
    gapDays: receives && sheds ? daysBetween(receives, sheds) : null,
    exposedShare:
      receives && sheds && overlap !== null ? overlap / openDays(receives, sheds) : null,
    guardDays: guardDaysOf(parent, source),
    standing:
      cleared ??
      (requirement !== null && overlap !== null && !isBeyondFloor && !areApartInTime(parent, source)
        ? "conflict"
        : "unknown"),
    time: cleared === "time" && !isCovered(parent, source) ? timeClear(parent, source) : null,
    lacksBloom: receives && sheds ? NONE : lacking(parent, source),
  };
}

/** On what a pair cleared by time rests. */
function timeClear(parent: Stand, source: Stand): TimeClear | null {
  if (!parent.receives || !source.sheds) return null;
  const parting = bloomParting(parent.receives, source.sheds, guardDaysOf(parent, source));
  const { isFirstEarlier, ...rest } = parting;
  return {
    earlier: isFirstEarlier ? parent.id : source.id,
    later: isFirstEarlier ? source.id : parent.id,
    isSure: isSureBasis(rest.basis) && !rest.isCountedUnlike,
    ...rest,
  };
}

const NONE: readonly string[] = [];

/** Ids of the two that lack the bloom dates asked of them. */
function lacking(parent: Stand, source: Stand): readonly string[] {
  return [
    ...(parent.receives === null ? [parent.id] : []),
    ...(source.sheds === null ? [source.id] : []),
  ];
}

/** Days that must lie between the windows of the two: the more careful kind decides. */
function guardDaysOf(parent: Stand, source: Stand): number {
  return Math.max(parent.guardDays, source.guardDays);
}

/** No distance is known, or only the least of a laxer level, and the pair lies beyond that. */
export function lacksFigure({
  requirement,
  distanceM,
}: Pick<IsolationPair, "requirement" | "distanceM">): boolean {
  if (requirement === null) return true;
  return requirement.isFloor === true && distanceM >= requirement.metres - DISTANCE_TOLERANCE_M;
}

/** Whether the guard days lie between the two windows, of whatever year they are. */
function areApartInTime(parent: Stand, source: Stand): boolean {
  const { receives } = parent;
  const { sheds } = source;
  return (
    receives !== null &&
    sheds !== null &&
    daysTogether(receives, sheds) === 0 &&
    daysBetween(receives, sheds) >= guardDaysOf(parent, source)
  );
}

/** What keeps a pair apart however near it lies: time, cover, or nothing. */
export function clearedOtherwise(
  parent: Stand,
  source: Stand,
): Extract<Standing, "time" | "cover"> | null {
  // Dates of another year are apart from this year's, and say nothing.
  if (areApartInTime(parent, source) && isDatedHere(parent) && isDatedHere(source)) return "time";
  return isCovered(parent, source) ? "cover" : null;
}

function isCovered(parent: Stand, source: Stand): boolean {
  return stopsPollen(parent.cover, parent.carrier) || stopsPollen(source.cover, source.carrier);
}

/** A mesh cage stops insects but not pollen in the wind; bags and taped hand-pollinated flowers stop both. */
export function stopsPollen(cover: Cover, carrier: PollenCarrier): boolean {
  if (cover === "none") return false;
  return cover !== "cage" || carrier === "insects";
}

/** Every directed pair that can cross, those cleared by distance included; in stand order. */
export function allIsolationPairs(
  stands: readonly Stand[],
  book: CropBook,
): readonly IsolationPair[] {
  const groups = groupStands(stands);
  return stands.flatMap((parent) =>
    (groups.get(parent.kind.group) ?? []).flatMap((source) => {
      const pair = isolationPair(parent, source, book);
      return pair ? [pair] : [];
    }),
  );
}
