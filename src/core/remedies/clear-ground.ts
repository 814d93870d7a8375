/**
 * Clear ground: where a planting could lie, with its present size and angle, without a conflict.
 * Free bed ground less everything that forbids it, both ways (its risk from others and theirs
 * from it). Sources that time or cover keep apart forbid nothing; pairs whose dates are unknown
 * forbid as if they flowered together.
 */
import type { CheckResult } from "../checks/run-checks.ts";
import { clearedOtherwise, isSameLot } from "../checks/isolation.ts";
import { standTogether } from "../checks/overlap.ts";
import { type Stand, requirementFrom } from "../checks/stand.ts";
import type { Relation } from "../kinds/crop.ts";
import { shapeCentre } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import { groundParts } from "./ground-parts.ts";
import {
  type Region,
  common,
  emptyRegion,
  regionArea,
  ringsOf,
  shapeAbout,
  swept,
  without,
} from "./region.ts";

export interface Forbidding {
  /** Stand that forbids. */
  readonly id: string;
  /** Square metres of otherwise free places it forbids. */
  readonly areaM2: number;
  /** Distance to be kept from it, metres. */
  readonly distanceM: number;
}

export interface ClearGround {
  /** Where the planting's centre may lie: rings, metres, holes included. */
  readonly centres: readonly Float64Array[];
  /** The ground the planting would cover at one of those places or another. */
  readonly ground: readonly Float64Array[];
  /**
   * Stands it crosses with where nothing tells how far is far enough: no isolation distance is
   * known for the seed parent of the two. They forbid nothing here, which clears nothing.
   */
  readonly untold: readonly string[];
  /** Works out which stands forbid places in beds, the most forbidding first. */
  readonly forbidding: () => readonly Forbidding[];
}

interface Zone {
  readonly id: string;
  readonly distanceM: number;
  readonly zone: Region;
}

/** Clear ground of a planting in the checked layout, or null when it is not a planting there. */
export function clearGround(result: CheckResult, plantingId: string): ClearGround | null {
  const stand = result.standById.get(plantingId);
  if (!stand?.planting) return null;
  const parts = groundParts(shapeAbout(stand.outline, shapeCentre(stand.planting.outline)));
  const beds = [...result.bedOutlines.values()].map(({ outline }) => parts.inBed(outline));
  const neighbours = result.stands
    .filter((other) => other.planting !== null && other !== stand && standTogether(stand, other))
    .map((other) => parts.onNeighbour(other.outline));
  const zones = forbiddenZones(stand, result).map(({ other, distanceM }): Zone => ({
    id: other.id,
    distanceM,
    zone: parts.nearer(other.outline, distanceM),
  }));
  const free = without(beds.flat(), neighbours.flat());
  const centres = without(
    free,
    zones.flatMap(({ zone }) => zone),
  );
  return {
    centres: ringsOf(centres),
    untold: result.stands.filter((other) => isUntold(stand, other)).map(({ id }) => id),
    ground: ringsOf(centres.length === 0 ? emptyRegion : swept(centres, parts.shape)),
    forbidding: () =>
      zones
        .map(({ id, distanceM, zone }) => ({
          id,
          distanceM,
          areaM2: regionArea(common(free, zone)),
        }))
        .filter(({ areaM2 }) => areaM2 > 0)
        .sort((a, b) => b.areaM2 - a.areaM2 || (a.id < b.id ? -1 : 1)),
  };
}

interface Keep {
  readonly other: Stand;
  readonly distanceM: number;
}

/** Distance to keep from each other stand: the larger of both ways, where neither time nor cover clears. */
function forbiddenZones(stand: Stand, result: CheckResult): readonly Keep[] {
  return result.stands.flatMap((other): readonly Keep[] => {
    if (other === stand || other.kind.group !== stand.kind.group) return [];
    const distanceM = distanceToKeep(stand, other);
    return distanceM > 0 ? [{ other, distanceM }] : [];
  });
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

/** The nearest place to a point among the allowed centres, or null when there is none. */
export function nearestPlace(centres: readonly Float64Array[], from: Point): Point | null {
  if (contains(centres, from)) return from;
  let best: Point | null = null;
  let bestSquare = Infinity;
  for (const ring of centres) {
    for (let index = 0; index < ring.length; index += 2) {
      const next = (index + 2) % ring.length;
      const on = nearestOnEdge(
        from,
        { x: ring[index] as number, y: ring[index + 1] as number },
        { x: ring[next] as number, y: ring[next + 1] as number },
      );
      const square = (on.x - from.x) ** 2 + (on.y - from.y) ** 2;
      if (square < bestSquare) {
        bestSquare = square;
        best = on;
      }
    }
  }
  return best;
}

function nearestOnEdge(point: Point, a: Point, b: Point): Point {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const square = dx * dx + dy * dy;
  const share = square === 0 ? 0 : ((point.x - a.x) * dx + (point.y - a.y) * dy) / square;
  const held = Math.min(1, Math.max(0, share));
  return { x: a.x + held * dx, y: a.y + held * dy };
}

function contains(rings: readonly Float64Array[], { x, y }: Point): boolean {
  let isInside = false;
  for (const ring of rings) {
    for (let index = 0; index < ring.length; index += 2) {
      const next = (index + 2) % ring.length;
      const [ax, ay, bx, by] = [ring[index], ring[index + 1], ring[next], ring[next + 1]] as [
        number,
        number,
        number,
        number,
      ];
      if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) isInside = !isInside;
    }
  }
  return isInside;
}
