/** Clear ground worked out from outlines and distances: free bed ground less all that forbids it. */
import { groundParts } from "./ground-parts.ts";
import type { GroundProblem } from "./ground-problem.ts";
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

/** The ground of a problem. */
export function solvedGround({
  outline,
  centre,
  beds,
  taken,
  keeps,
  untold,
}: GroundProblem): ClearGround {
  const parts = groundParts(shapeAbout(outline, centre));
  const free = without(
    beds.flatMap((bed) => parts.inBed(bed)),
    taken.flatMap((neighbour) => parts.onNeighbour(neighbour)),
  );
  // Where nothing is free there is nothing to forbid.
  const zones = (free.length === 0 ? [] : keeps).map(
    ({ id, outline: source, distanceM }): Zone => ({
      id,
      distanceM,
      zone: parts.nearer(source, distanceM),
    }),
  );
  const centres = without(
    free,
    zones.flatMap(({ zone }) => zone),
  );
  return {
    centres: ringsOf(centres),
    untold,
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
