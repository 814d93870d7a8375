/** Things of a list by their groups and their bounds, and which of them touch. */
import { boxesOf, curveOrder, gridOf } from "../geometry/boxes.ts";
import { nearPairs } from "./near-pairs.ts";
import type { Placed } from "./near-index.ts";

interface Grouped {
  readonly kind: { readonly group: string };
}

/** Places of a list by crossing group, in an order of them. */
export function groupPlaces(
  stands: readonly Grouped[],
  order: Iterable<number>,
): ReadonlyMap<string, readonly number[]> {
  const groups = new Map<string, number[]>();
  for (const place of order) {
    const { group } = (stands[place] as Grouped).kind;
    const places = groups.get(group);
    if (places) places.push(place);
    else groups.set(group, [place]);
  }
  return groups;
}

/** Stands by crossing group, in the order given. */
export function groupStands<S extends Grouped>(
  stands: readonly S[],
): ReadonlyMap<string, readonly S[]> {
  const standsAt = (places: readonly number[]) => places.map((place) => stands[place] as S);
  const groups = groupPlaces(stands, stands.keys());
  return new Map([...groups].map(([group, places]) => [group, standsAt(places)]));
}

/** Tells each two things whose bounds touch once, by their places in the list. */
export function touchings(items: readonly Placed[], touch: (one: number, other: number) => void) {
  const boxes = boxesOf(items.map(({ outline }) => outline));
  const grid = gridOf(boxes);
  const order = curveOrder(grid);
  // So near that they touch.
  const squares = new Float64Array(items.length).fill(Number.MIN_VALUE);
  nearPairs({ boxes, grid, order, squares }, (one, other) =>
    touch(order[one] as number, order[other] as number),
  );
}
