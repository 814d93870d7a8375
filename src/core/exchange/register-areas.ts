/**
 * A register cut into areas small enough to check one at a time: each with the plantings of its
 * own, and those around it that could matter to them.
 */
import Flatbush from "flatbush";
import { type Bounds, boundsGap, growBounds, joinBounds } from "../geometry/bounds.ts";
import type { Boxes } from "../geometry/boxes.ts";
import { tiles } from "../geometry/tiles.ts";

export interface RegisterGround {
  /** Bounds of each feature, sheet metres. */
  readonly boxes: Boxes;
  /** Metres within which others matter to it. */
  readonly reach: Float64Array;
  /** Number of its crossing group. */
  readonly group: Uint16Array;
}

export interface Area {
  /** Places of its features, ascending: its own and those around it. */
  readonly all: readonly number[];
  /** Its own: every feature is of exactly one area. */
  readonly own: ReadonlySet<number>;
}

/** Features an area is made of: so many that what lies around is few beside them. No source; our choice. */
const AREA_FEATURES = 2000;

/**
 * Around an area lie those of a crossing group within the reach of one of its own or that have
 * one of its own within their reach, and all whose bounds touch it.
 */
export function* registerAreas(
  ground: RegisterGround,
  perArea = AREA_FEATURES,
): Generator<Area, void, void> {
  const { boxes, reach, group } = ground;
  const tree = new Flatbush(reach.length);
  for (let at = 0; at < boxes.length; at += 4) {
    const { minX, minY, maxX, maxY } = boundsAt(boxes, at / 4);
    tree.add(minX, minY, maxX, maxY);
  }
  tree.finish();
  const farthest = farthestReach(reach, group);
  for (const tile of tiles(boxes, perArea)) {
    const own = new Set(tile);
    const all = new Set(own);
    const parts = groupParts(own, ground);
    for (const [number, part] of parts) {
      const { minX, minY, maxX, maxY } = growBounds(
        part.bounds,
        Math.max(part.reach, farthest[number] ?? 0),
      );
      tree.search(minX, minY, maxX, maxY, (place) => {
        if (group[place] !== number) return false;
        const within = Math.max(part.reach, reach[place] as number);
        if (boundsGap(boundsAt(boxes, place), part.bounds) <= within) all.add(place);
        return false;
      });
    }
    const whole = joinBounds([...parts.values()].map(({ bounds }) => bounds));
    if (whole) {
      for (const place of tree.search(whole.minX, whole.minY, whole.maxX, whole.maxY)) {
        all.add(place);
      }
    }
    yield { all: [...all].sort((a, b) => a - b), own };
  }
}

function boundsAt(boxes: Boxes, place: number): Bounds {
  return {
    minX: boxes[place * 4] as number,
    minY: boxes[place * 4 + 1] as number,
    maxX: boxes[place * 4 + 2] as number,
    maxY: boxes[place * 4 + 3] as number,
  };
}

/** The farthest reach in each crossing group. */
function farthestReach(reach: Float64Array, group: Uint16Array): readonly number[] {
  const farthest: number[] = [];
  reach.forEach((metres, place) => {
    const number = group[place] as number;
    farthest[number] = Math.max(farthest[number] ?? 0, metres);
  });
  return farthest;
}

interface Part {
  readonly bounds: Bounds;
  readonly reach: number;
}

/** Of an area's own features: the bounds and the farthest reach of each crossing group. */
function groupParts(
  own: ReadonlySet<number>,
  { boxes, reach, group }: RegisterGround,
): ReadonlyMap<number, Part> {
  const parts = new Map<number, Part>();
  for (const place of own) {
    const number = group[place] as number;
    const bounds = boundsAt(boxes, place);
    const part = parts.get(number);
    parts.set(number, {
      bounds: part ? (joinBounds([part.bounds, bounds]) ?? bounds) : bounds,
      reach: Math.max(part?.reach ?? 0, reach[place] as number),
    });
  }
  return parts;
}
