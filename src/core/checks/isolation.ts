/**
 * The isolation rule. For every seed parent and every pollen source of a crossing group it can
 * cross with: cleared by distance, else by time, else by cover, else a conflict - or unknown when
 * a figure or a date is missing. The seed parent decides how far is far enough, so a pair can be
 * at risk one way only.
 *
 * Candidates come from a spatial index when a crossing group is large; the verdict always from
 * the measured distance between outlines.
 */
import Flatbush from "flatbush";
import { gapDays, overlapDays } from "../calendar/bloom-window.ts";
import type { PollenCarrier } from "../crops/crop.ts";
import type { CropBook } from "../crops/crop-book.ts";
import { boundsGap } from "../geometry/bounds.ts";
import { gapBetween } from "../geometry/gap.ts";
import type { Cover } from "../model/plan.ts";
import type { IsolationPair, Standing } from "./isolation-pair.ts";
import type { Stand } from "./stand.ts";

/**
 * Distances short of the requirement by less than this pass: published figures are minima, and a
 * micrometre is rounding, not ground.
 */
export const DISTANCE_TOLERANCE_M = 1e-6;

/** Below this many stands of one group, measuring all beats building an index. */
const INDEX_FROM = 64;

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
  const byParent = new Map<string, readonly IsolationPair[]>();
  const fresh: IsolationPair[] = [];
  for (const group of groupStands(stands).values()) {
    const changed = earlier && group.filter((stand) => earlier.changed.has(stand.id));
    const near = changed && changed.length < group.length ? null : nearStands(group);
    for (const parent of group) {
      if (!parent.isSeedParent) continue;
      const before = earlier?.changed.has(parent.id) ? undefined : earlier?.byParent.get(parent.id);
      const kept = before && earlier ? keptPairs(before, earlier.changed) : [];
      const found: IsolationPair[] = [];
      for (const source of before && changed ? changed : (near?.(parent) ?? group)) {
        const pair = closePair(parent, source, book);
        if (pair) found.push(pair);
      }
      for (const pair of found) fresh.push(pair);
      byParent.set(parent.id, kept.length === 0 ? found : [...kept, ...found]);
    }
    if (earlier) putInOrder(group, byParent);
  }
  return { byParent, pairs: stands.flatMap((stand) => byParent.get(stand.id) ?? []), fresh };
}

/** Carried-forward lists in the order of the stands, as a fresh run makes them. */
function putInOrder(
  group: readonly Stand[],
  byParent: Map<string, readonly IsolationPair[]>,
): void {
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

function groupStands(stands: readonly Stand[]): ReadonlyMap<string, readonly Stand[]> {
  const groups = new Map<string, Stand[]>();
  for (const stand of stands) {
    const group = groups.get(stand.kind.group);
    if (group) group.push(stand);
    else groups.set(stand.kind.group, [stand]);
  }
  return groups;
}

/** Stands whose bounds come within a seed parent's required distance; null: measure the whole group. */
function nearStands(group: readonly Stand[]): ((parent: Stand) => readonly Stand[]) | null {
  if (group.length < INDEX_FROM) return null;
  const index = new Flatbush(group.length);
  for (const { outline } of group) {
    const { minX, minY, maxX, maxY } = outline.bounds;
    index.add(minX, minY, maxX, maxY);
  }
  index.finish();
  return (parent) => {
    if (parent.requirement === null) return group;
    const reach = parent.requirement.metres;
    const { minX, minY, maxX, maxY } = parent.outline.bounds;
    return index
      .search(minX - reach, minY - reach, maxX + reach, maxY + reach)
      .sort((a, b) => a - b)
      .map((position) => group[position] as Stand);
  };
}

/** The pair, unless distance clears it or the two never cross. */
function closePair(parent: Stand, source: Stand, book: CropBook): IsolationPair | null {
  const required = parent.requirement?.metres ?? null;
  if (required !== null && boundsGap(parent.outline.bounds, source.outline.bounds) >= required) {
    return null;
  }
  const pair = isolationPair(parent, source, book);
  return pair !== null && pair.standing !== "distance" ? pair : null;
}

/** Plantings of one variety add up to one population, unless the grower keeps two lots apart. */
export function isSameLot(a: Stand, b: Stand): boolean {
  if (a === b) return true;
  if (a.varietyKey === null || a.varietyKey !== b.varietyKey) return false;
  return !(a.keepApart || b.keepApart);
}

/** Measures and judges one directed pair; null when the two never cross. */
export function isolationPair(parent: Stand, source: Stand, book: CropBook): IsolationPair | null {
  if (!parent.isSeedParent || !source.shedsPollen || isSameLot(parent, source)) return null;
  const { relation } = book.relation(parent.kind, source.kind);
  if (relation === "no") return null;
  const gap = gapBetween(parent.outline, source.outline);
  const requirement = parent.requirement;
  const time = timeBetween(parent, source);
  const isFar = requirement !== null && gap.distanceM >= requirement.metres - DISTANCE_TOLERANCE_M;
  return {
    seedParent: parent.id,
    pollenSource: source.id,
    distanceM: gap.distanceM,
    where: [gap.from, gap.to],
    requiredM: requirement?.metres ?? null,
    requirement,
    relation,
    ...time,
    standing: isFar
      ? "distance"
      : (clearedOtherwise(parent, source, time) ??
        (requirement !== null && time.overlapDays !== null ? "conflict" : "unknown")),
    lacksBloom: [
      ...(parent.receives === null ? [parent.id] : []),
      ...(source.sheds === null ? [source.id] : []),
    ],
  };
}

type Time = Pick<IsolationPair, "overlapDays" | "gapDays" | "exposedShare" | "guardDays">;

/** How the seed parent's receptive days and the source's shedding days lie to each other. */
function timeBetween(parent: Stand, source: Stand): Time {
  const guardDays = Math.max(parent.guardDays, source.guardDays);
  const received = parent.receives?.outer;
  const shed = source.sheds?.outer;
  if (!received || !shed) {
    return { overlapDays: null, gapDays: null, exposedShare: null, guardDays };
  }
  const overlap = overlapDays(received, shed);
  return {
    overlapDays: overlap,
    gapDays: gapDays(received, shed),
    exposedShare: overlap / (received.last - received.first + 1),
    guardDays,
  };
}

/** What keeps a pair apart however near it lies: time, cover, or nothing. */
export function clearedOtherwise(
  parent: Stand,
  source: Stand,
  time: Time = timeBetween(parent, source),
): Extract<Standing, "time" | "cover"> | null {
  if (time.overlapDays === 0 && time.gapDays !== null && time.gapDays >= time.guardDays) {
    return "time";
  }
  const isCovered =
    stopsPollen(parent.cover, parent.carrier) || stopsPollen(source.cover, source.carrier);
  return isCovered ? "cover" : null;
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
