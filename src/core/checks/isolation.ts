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
import type { Relation } from "../kinds/crop.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import { boundsGap } from "../geometry/bounds.ts";
import { boxesOf } from "../geometry/boxes.ts";
import { GAP_NUMBERS, gapAt, gapBetween, gapWithin } from "../geometry/gap.ts";
import { gapInColumns } from "../geometry/outline-columns.ts";
import { placeById } from "../lists/changed-list.ts";
import { PlacedMap } from "../lists/placed-map.ts";
import {
  type CarriedForward,
  carriedLists,
  meetings,
  pairsInOrder,
} from "../nearness/directed-pairs.ts";
import { groupStands } from "../nearness/near-stands.ts";
import { PairColumns } from "../nearness/pair-columns.ts";
import { WayLists } from "../nearness/way-lists.ts";
import {
  DISTANCE_TOLERANCE_M,
  type IsolationPair,
  type JudgedPairs,
  type Standing,
  type TimeClear,
  codeOf,
  isStanding,
  judgedAmong,
  lacksFigure,
} from "./isolation-pair.ts";
import { type Stand, guardDaysOf, isSameLot, limitOf, lotsOf, requirementFrom } from "./stand.ts";
import { isCovered, isSurelyCovered } from "../practice/pollen-cover.ts";

/** All lists of it are made when they are read. */
export interface IsolationRun extends JudgedPairs {
  /** Directed pairs closer than required, or not known to be far enough, by seed parent. */
  readonly byParent: ReadonlyMap<string, readonly IsolationPair[]>;
  /** The same in one list, in the order of the stands: seed parents first, then sources. */
  readonly pairs: readonly IsolationPair[];
}

/**
 * All directed pairs that distance does not clear. With an earlier run, only pairs that touch a
 * stand changed since are looked at again; the result equals a fresh run.
 */
export function isolationPairs(
  stands: readonly Stand[],
  book: CropBook,
  earlier?: CarriedForward<IsolationPair>,
): IsolationRun {
  return earlier ? carriedPairs(stands, book, earlier) : freshRun(stands, book);
}

function freshRun(stands: readonly Stand[], book: CropBook): IsolationRun {
  const columns = judgedColumns(stands, book);
  const lists = new WayLists(columns, stands.length, (way) =>
    pairOfWay(stands, columns, way, book),
  );
  const isParent = (place: number) => (stands[place] as Stand).isSeedParent;
  return {
    byParent: new PlacedMap(() => placeById(stands), lists.pages(isParent)),
    get pairs() {
      return lists.all;
    },
    ways: lists,
    standing: (standing) => lists.those((code) => isStanding(code, standing)),
    freshWays: (standing) => lists.both((code) => isStanding(code, standing)),
  };
}

/** Every two stands of which distance does not clear both ways, measured once. */
function judgedColumns(stands: readonly Stand[], book: CropBook): PairColumns {
  const columns = new PairColumns(stands.length * 4); // As many as they mostly are.
  const outlines = stands.map(({ outline }) => outline);
  const boxes = boxesOf(outlines);
  const lots = lotsOf(stands);
  const relation = (parent: Stand, source: Stand): Relation =>
    parent.isSeedParent && source.shedsPollen
      ? book.relation(parent.kind, source.kind).relation
      : "no";
  const measure = gapInColumns(outlines, boxes);
  meetings(stands, boxes, (from, to, isMutual) => {
    if (lots[from] !== 0 && lots[from] === lots[to]) return;
    const [one, other] = [stands[from] as Stand, stands[to] as Stand];
    const onward = relation(one, other);
    const back = isMutual ? relation(other, one) : "no";
    if (onward === "no" && back === "no") return;
    const limitM = Math.max(
      onward === "no" ? 0 : limitOf(one, other),
      back === "no" ? 0 : limitOf(other, one),
    );
    const at = columns.nextGap();
    if (!measure(from, to, limitM, columns.gaps, at)) return;
    const metres = columns.gaps[at] as number;
    const there = onward === "no" ? 0 : codeOf(standingOf(one, other, metres), onward);
    const andBack = back === "no" ? 0 : codeOf(standingOf(other, one, metres), back);
    if (there !== 0 || andBack !== 0) columns.add(from, to, there, andBack);
  });
  return columns;
}

/** A way of the columns as the pair it is. */
function pairOfWay(
  stands: readonly Stand[],
  { one, other, gaps }: PairColumns,
  way: number,
  book: CropBook,
): IsolationPair {
  const index = way >> 1;
  const [a, b] = [stands[one[index] as number] as Stand, stands[other[index] as number] as Stand];
  const { distanceM, from, to } = gapAt(gaps, index * GAP_NUMBERS);
  const isBack = (way & 1) === 1;
  const [parent, source] = isBack ? [b, a] : [a, b];
  const { relation } = book.relation(parent.kind, source.kind);
  return judgedPair(parent, source, relation, distanceM, isBack ? [to, from] : [from, to]);
}

function carriedPairs(
  stands: readonly Stand[],
  book: CropBook,
  earlier: CarriedForward<IsolationPair>,
): IsolationRun {
  const { byParent, fresh } = carriedLists(
    stands,
    earlier,
    (group) => freshRun(group, book).byParent,
    (parent, sources) => closePairs(parent, sources, book),
  );
  const pairs = pairsInOrder(stands, byParent);
  return { byParent, pairs, ...judgedAmong(pairs, fresh) };
}

/** The pairs of one seed parent that distance does not clear, in the order of the sources. */
function closePairs(parent: Stand, sources: readonly Stand[], book: CropBook): IsolationPair[] {
  const { bounds } = parent.outline;
  const pairs: IsolationPair[] = [];
  for (const source of sources) {
    if (boundsGap(bounds, source.outline.bounds) >= parent.reachM) continue;
    const pair = isolationPair(parent, source, book);
    if (pair && isClose(pair)) pairs.push(pair);
  }
  return pairs;
}

/**
 * Two stands from the one to the other and back, measured once; a way is null where the two do not
 * cross or distance clears it, and all where both are so.
 */
export function closeWays(
  one: Stand,
  other: Stand,
  book: CropBook,
): readonly [IsolationPair | null, IsolationPair | null] | null {
  const apartM = boundsGap(one.outline.bounds, other.outline.bounds);
  const there = apartM < one.reachM ? book.relation(one.kind, other.kind).relation : "no";
  const back = apartM < other.reachM ? book.relation(other.kind, one.kind).relation : "no";
  const isThere = canCross(one, other, there);
  const isBack = canCross(other, one, back);
  if (!isThere && !isBack) return null;
  const limitM = Math.max(isThere ? limitOf(one, other) : 0, isBack ? limitOf(other, one) : 0);
  const gap = gapWithin(one.outline, other.outline, limitM);
  if (gap === null) return null;
  const { distanceM, from, to } = gap;
  const way = isThere ? judgedPair(one, other, there, distanceM, [from, to]) : null;
  const wayBack = isBack ? judgedPair(other, one, back, distanceM, [to, from]) : null;
  return [way && isClose(way) ? way : null, wayBack && isClose(wayBack) ? wayBack : null];
}

const isClose = ({ standing }: IsolationPair) => standing !== "distance";

/** Measures and judges one directed pair; null when the two never cross. */
export function isolationPair(parent: Stand, source: Stand, book: CropBook): IsolationPair | null {
  const { relation } = book.relation(parent.kind, source.kind);
  if (!canCross(parent, source, relation)) return null;
  const { distanceM, from, to } = gapBetween(parent.outline, source.outline);
  return judgedPair(parent, source, relation, distanceM, [from, to]);
}

function canCross(parent: Stand, source: Stand, relation: Relation): boolean {
  return (
    relation !== "no" && parent.isSeedParent && source.shedsPollen && !isSameLot(parent, source)
  );
}

function judgedPair(
  parent: Stand,
  source: Stand,
  relation: Relation,
  distanceM: number,
  where: IsolationPair["where"],
): IsolationPair {
  const requirement = requirementFrom(parent, source.kind);
  const [{ receives }, { sheds }] = [parent, source];
  const overlap = receives && sheds ? daysTogether(receives, sheds) : null;
  const gapDays = receives && sheds ? daysBetween(receives, sheds) : null;
  const standing = standingOf(parent, source, distanceM);
  return {
    seedParent: parent.id,
    pollenSource: source.id,
    distanceM,
    where,
    requiredM: requirement?.metres ?? null,
    requirement,
    relation,
    overlapDays: overlap,
    gapDays,
    exposedShare:
      receives && sheds && overlap !== null ? overlap / openDays(receives, sheds) : null,
    guardDays: guardDaysOf(parent, source),
    standing,
    time: standing === "time" ? timeClear(parent, source, distanceM) : null,
    lacksBloom: receives && sheds ? NONE : lacking(parent, source),
  };
}

/** What clears a way that can cross, or that nothing does. */
function standingOf(parent: Stand, source: Stand, distanceM: number): Standing {
  if (distanceM >= limitOf(parent, source) - DISTANCE_TOLERANCE_M) return "distance";
  const isApart = isApartInTime(parent, source);
  const cleared = clearedBeside(parent, source, isApart, distanceM);
  if (cleared !== null) return cleared;
  const requirement = requirementFrom(parent, source.kind);
  const isDated = parent.receives !== null && source.sheds !== null;
  const isTold = isDated && !isApart && !lacksFigure({ requirement, distanceM });
  return isTold ? "conflict" : "unknown";
}

/** On what a pair cleared by time rests, where no cover clears it as well. */
function timeClear(parent: Stand, source: Stand, distanceM: number): TimeClear | null {
  if (!parent.receives || !source.sheds) return null;
  if (isSurelyCovered(parent, source, distanceM)) return null;
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
  return [parent.receives ? [] : parent.id, source.sheds ? [] : source.id].flat();
}

/** What keeps a pair apart with that much ground between: time, cover, or nothing but the ground. */
export function clearedOtherwise(
  parent: Stand,
  source: Stand,
  distanceM: number,
): Extract<Standing, "time" | "cover"> | null {
  return clearedBeside(parent, source, isApartInTime(parent, source), distanceM);
}

/** Whether the guard days lie between the windows, of whatever year they are. */
function isApartInTime(parent: Stand, source: Stand): boolean {
  const [{ receives }, { sheds }] = [parent, source];
  if (receives === null || sheds === null || daysTogether(receives, sheds) > 0) return false;
  return daysBetween(receives, sheds) >= guardDaysOf(parent, source);
}

function clearedBeside(parent: Stand, source: Stand, isApart: boolean, distanceM: number) {
  // Dates of another year are apart from this year's, and say nothing.
  if (isApart && isDatedHere(parent) && isDatedHere(source)) return "time";
  return isCovered(parent, source, distanceM) ? "cover" : null;
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
