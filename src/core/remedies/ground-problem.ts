/**
 * What clear ground of a planting is worked out from: outlines and distances alone, so that another
 * thread can do it.
 */
import type { CheckResult } from "../checks/run-checks.ts";
import { clearedOtherwise } from "../checks/isolation.ts";
import { standTogether } from "../checks/overlap.ts";
import { type Stand, requirementFrom, isSameLot } from "../checks/stand.ts";
import { type Bounds, boundsGap, joinBounds } from "../geometry/bounds.ts";
import { type Outline, shapeCentre } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Relation } from "../kinds/crop.ts";

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
      const distanceM = distanceToKeep(stand, other);
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
  return a.kind.group === b.kind.group ? Math.max(keepFrom(a, b), keepFrom(b, a)) : 0;
}

/** Whether two stands may cross and no figure tells how far apart would do. */
export function isUntold(a: Stand, b: Stand): boolean {
  const lacks = (parent: Stand, source: Stand) =>
    (parent.requirement === null || parent.requirement.isFloor === true) &&
    mayCross(parent, source, ["freely", "sometimes", "rarely"]);
  return a !== b && a.kind.group === b.kind.group && (lacks(a, b) || lacks(b, a));
}

function keepFrom(parent: Stand, source: Stand): number {
  const requirement = requirementFrom(parent, source.kind);
  if (requirement === null) return 0;
  return mayCross(parent, source, ["freely", "sometimes"]) ? requirement.metres : 0;
}

/** Whether seed of the one can take pollen of the other, by one of the relations, now. */
function mayCross(parent: Stand, source: Stand, relations: readonly Relation[]): boolean {
  return (
    parent.isSeedParent &&
    source.shedsPollen &&
    !isSameLot(parent, source) &&
    relations.includes(parent.book.relation(parent.kind, source.kind).relation) &&
    clearedOtherwise(parent, source) === null
  );
}
