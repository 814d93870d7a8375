/**
 * Which stands of a group lie near each other. Stands are sorted along a curve that keeps
 * neighbours together and cut into blocks; a tree over the blocks finds what is near a whole
 * block at once, and a scan over flat arrays what is near each stand of it. Asked in `order`,
 * every block is gathered once.
 */
import Flatbush from "flatbush";
import { boundsGap, growBounds } from "../geometry/bounds.ts";
import { type Boxes, around, boxTouches, curveOrder } from "../geometry/boxes.ts";
import type { Placed } from "./near-index.ts";

/** Below this many stands, measuring all beats building an index. */
const INDEX_FROM = 64;
const BLOCK = 8;
/** So much farther is looked, metres: of two that reach each other, each finds the other. */
const ROUNDING_M = 1e-6;

/** A thing with a place, and how far from it others count; infinite: all do. */
interface Reaching extends Placed {
  readonly reachM: number;
}

export interface NearStands {
  /** Places in the group, neighbours together: the order in which asking is cheapest. */
  readonly order: Uint32Array;
  /**
   * Places of those whose bounds lie in the bounds, grown by its required distance, of the stand at
   * a place in the group, itself included; ascending. All when no distance is known. The list is
   * used again by the next call.
   */
  readonly near: (place: number) => readonly number[];
}

interface Grouped {
  readonly kind: { readonly group: string };
}

/** Places of a list by crossing group, ascending. */
export function groupPlaces(stands: readonly Grouped[]): ReadonlyMap<string, readonly number[]> {
  const groups = new Map<string, number[]>();
  for (const [place, { kind }] of stands.entries()) {
    const group = groups.get(kind.group);
    if (group) group.push(place);
    else groups.set(kind.group, [place]);
  }
  return groups;
}

/** Stands by crossing group, in the order given. */
export function groupStands<S extends Grouped>(
  stands: readonly S[],
): ReadonlyMap<string, readonly S[]> {
  const standsAt = (places: readonly number[]) => places.map((place) => stands[place] as S);
  return new Map([...groupPlaces(stands)].map(([group, places]) => [group, standsAt(places)]));
}

/** Null when the group is so small that every stand may as well be measured. */
export function nearStands(
  group: readonly Reaching[],
  boxes: Boxes = boxesOf(group),
): NearStands | null {
  if (group.length < INDEX_FROM) return null;
  const order = curveOrder(boxes);
  const blockOf = new Uint32Array(group.length);
  order.forEach((place, rank) => {
    blockOf[place] = Math.floor(rank / BLOCK);
  });
  const gather = gatherer(group, boxes, order);
  const all = [...group.keys()];
  let gathered: Gathered | null = null;
  const found: number[] = [];
  const near = (place: number): readonly number[] => {
    const reach = (group[place] as Reaching).reachM + ROUNDING_M;
    if (reach === Infinity) return all;
    const block = blockOf[place] as number;
    if (gathered?.block !== block) gathered = gather(block);
    return scan(gathered, boxes, place, reach, found);
  };
  return { order, near };
}

export function boxesOf(group: readonly Placed[]): Boxes {
  const boxes = new Float64Array(group.length * 4);
  group.forEach(({ outline: { bounds } }, place) => {
    boxes[place * 4] = bounds.minX;
    boxes[place * 4 + 1] = bounds.minY;
    boxes[place * 4 + 2] = bounds.maxX;
    boxes[place * 4 + 3] = bounds.maxY;
  });
  return boxes;
}

/** Everything near one block, places ascending, with its bounds side by side. */
interface Gathered {
  readonly block: number;
  readonly count: number;
  readonly places: Uint32Array;
  readonly boxes: Boxes;
}

function gatherer(group: readonly Reaching[], boxes: Boxes, order: Uint32Array) {
  const blocks = Math.ceil(order.length / BLOCK);
  const membersOf = (block: number) => order.subarray(block * BLOCK, (block + 1) * BLOCK);
  const tree = new Flatbush(blocks);
  for (let block = 0; block < blocks; block += 1) {
    const { minX, minY, maxX, maxY } = around(boxes, membersOf(block));
    tree.add(minX, minY, maxX, maxY);
  }
  tree.finish();
  // Used again for every block: making typed arrays costs more than filling them.
  const places = new Uint32Array(order.length);
  const near = new Float64Array(order.length * 4);
  return (block: number): Gathered => {
    const members = membersOf(block);
    let reach = 0;
    for (const place of members) {
      const { reachM } = group[place] as Reaching;
      if (reachM !== Infinity) reach = Math.max(reach, reachM);
    }
    const { minX, minY, maxX, maxY } = growBounds(around(boxes, members), reach + ROUNDING_M);
    let count = 0;
    for (const other of tree.search(minX, minY, maxX, maxY)) {
      const end = Math.min((other + 1) * BLOCK, order.length);
      for (let rank = other * BLOCK; rank < end; rank += 1) {
        const place = order[rank] as number;
        if (!boxTouches(boxes, place * 4, minX, minY, maxX, maxY)) continue;
        places[count] = place;
        count += 1;
      }
    }
    places.subarray(0, count).sort();
    for (let index = 0; index < count; index += 1) {
      const place = places[index] as number;
      for (let side = 0; side < 4; side += 1) {
        near[index * 4 + side] = boxes[place * 4 + side] as number;
      }
    }
    return { block, count, places, boxes: near };
  };
}

function scan(
  { count, places, boxes: others }: Gathered,
  boxes: Boxes,
  place: number,
  reach: number,
  near: number[],
): readonly number[] {
  const minX = (boxes[place * 4] as number) - reach;
  const minY = (boxes[place * 4 + 1] as number) - reach;
  const maxX = (boxes[place * 4 + 2] as number) + reach;
  const maxY = (boxes[place * 4 + 3] as number) + reach;
  near.length = 0;
  for (let index = 0; index < count; index += 1) {
    if (boxTouches(others, index * 4, minX, minY, maxX, maxY)) near.push(places[index] as number);
  }
  return near;
}

/** Tells each two things whose bounds touch once, by their places in the list, the lesser first. */
export function touchings(items: readonly Placed[], touch: (one: number, other: number) => void) {
  const reaching = items.map(({ outline }) => ({ outline, reachM: 0 }));
  const index = nearStands(reaching);
  const all = [...items.keys()];
  for (const at of index?.order ?? all) {
    const { bounds } = (items[at] as Placed).outline;
    for (const other of index?.near(at) ?? all) {
      if (other <= at) continue;
      if (boundsGap(bounds, (items[other] as Placed).outline.bounds) === 0) touch(at, other);
    }
  }
}
