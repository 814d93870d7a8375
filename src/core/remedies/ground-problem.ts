/**
 * What clear ground of a planting is worked out from: outlines and distances alone, so that another
 * thread can do it.
 */
import type { CheckResult } from "../checks/run-checks.ts";
import { clearedOtherwise } from "../checks/isolation.ts";
import { type MixingNeed, mixingNeed } from "../checks/mixing.ts";
import { standTogether } from "../checks/overlap.ts";
import { type Stand, isSameLot, limitOf, requirementFrom } from "../checks/stand.ts";
import { type Bounds, boundsGap, joinBounds } from "../geometry/bounds.ts";
import { type Outline, shapeCentre } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Relation } from "../kinds/crop.ts";
import { CAGE_ROOM_M } from "../practice/pollen-cover.ts";

/** Something a planting must be kept from. */
export interface Keep {
  /** Of the stand. */
  readonly id: string;
  readonly outline: Outline;
  /** Distance to be kept from it, metres. */
  readonly distanceM: number;
}

export interface GroundProblem {
  readonly outline: Outline;
  /** The place of the outline that clear ground is told for. */
  readonly centre: Point;
  readonly beds: readonly Outline[];
  /** Ground that is taken while the planting is there, as far as it lies by a bed. */
  readonly taken: readonly Outline[];
  /** What forbids ground by a bed. */
  readonly keeps: readonly Keep[];
  /**
   * Stands it crosses with where nothing tells how far is far enough: no isolation distance is
   * known for the seed parent of the two.
   */
  readonly untold: readonly string[];
}

/** Added to a reach before something is left out as too far away to matter, metres. */
const REACH_SLACK_M = 0.1;

/** The problem for a planting of the checked layout, or null when it is not a planting there. */
export function groundProblem(result: CheckResult, plantingId: string): GroundProblem | null {
  const stand = result.standById.get(plantingId);
  if (!stand?.planting) return null;
  const beds = [...result.bedOutlines.values()].map(({ outline }) => outline);
  const ground = joinBounds(beds.map(({ bounds }) => bounds));
  const size = extent(stand.outline.bounds);
  const isNear = ({ bounds }: Outline, reachM: number) =>
    ground !== null && boundsGap(bounds, ground) <= reachM + size + REACH_SLACK_M;
  const others = result.stands.filter((other) => other !== stand);
  return {
    outline: stand.outline,
    centre: shapeCentre(stand.planting.outline),
    beds,
    taken: others.flatMap((other) =>
      other.planting !== null && isNear(other.outline, 0) && standTogether(stand, other)
        ? [other.outline]
        : [],
    ),
    keeps: others.flatMap((other): readonly Keep[] => {
      const { id, outline } = other;
      const distanceM = Math.max(
        distanceToKeep(stand, other),
        mixingRoom(stand, other, () => true),
      );
      return distanceM > 0 && isNear(outline, distanceM) ? [{ id, outline, distanceM }] : [];
    }),
    untold: others.filter((other) => isUntold(stand, other)).map(({ id }) => id),
  };
}

/** No two places of a box are farther apart, metres. */
function extent({ minX, minY, maxX, maxY }: Bounds): number {
  return Math.hypot(maxX - minX, maxY - minY);
}

/** Metres that must lie between two stands, whichever puts the other at risk; 0 when none need to. */
export function distanceToKeep(a: Stand, b: Stand): number {
  if (a.kind.group !== b.kind.group) return 0;
  return Math.max(keepFrom(a, b), keepFrom(b, a), mixingRoom(a, b, isLaw));
}

/** Metres that keep plants and harvests of the two apart, where a need counts. */
function mixingRoom(a: Stand, b: Stand, counts: (need: MixingNeed) => boolean): number {
  const ways = [mixingNeed(a, b), mixingNeed(b, a)];
  return Math.max(0, ...ways.map((need) => (need && counts(need) ? need.metres : 0)));
}

/** Short of it is a conflict; of the strip beside a published 0 a caution. */
const isLaw = (need: MixingNeed) => need.isLaw;

/** Whether two stands may cross and no figure tells how far apart would do. */
export function isUntold(a: Stand, b: Stand): boolean {
  const lacks = (parent: Stand, source: Stand) =>
    (parent.requirement === null || parent.requirement.isFloor === true) &&
    mayCross(parent, source, ["freely", "sometimes", "rarely"]);
  return a !== b && a.kind.group === b.kind.group && (lacks(a, b) || lacks(b, a));
}

function keepFrom(parent: Stand, source: Stand): number {
  if (!canCross(parent, source, ["freely", "sometimes"])) return 0;
  if (clearedOtherwise(parent, source, 0) !== null) return 0;
  if (clearedOtherwise(parent, source, CAGE_ROOM_M) !== null) {
    // A cage parts the two only where it has room to stand between them.
    return Math.min(CAGE_ROOM_M, limitOf(parent, source));
  }
  return requirementFrom(parent, source.kind)?.metres ?? 0;
}

/** Whether seed of the one can take pollen of the other, by one of the relations, now. */
function mayCross(parent: Stand, source: Stand, relations: readonly Relation[]): boolean {
  return (
    canCross(parent, source, relations) && clearedOtherwise(parent, source, CAGE_ROOM_M) === null
  );
}

function canCross(parent: Stand, source: Stand, relations: readonly Relation[]): boolean {
  return (
    parent.isSeedParent &&
    source.shedsPollen &&
    !isSameLot(parent, source) &&
    relations.includes(parent.book.relation(parent.kind, source.kind).relation)
  );
}
