/**
 * An edit turns one plan into the next. Edits never change a plan in place, keep untouched items
 * the same objects, and carry a title for undo, such as "Move B07-2".
 */
import type { Layout, Plan } from "../model/plan.ts";

export interface Edit {
  readonly title: string;
  readonly apply: (plan: Plan) => Plan;
  /** What it leaves alone in that plan and why, to be said when it is kept; null for nothing. */
  readonly note?: (plan: Plan) => string | null;
  /** How far it moves what it moves, metres, where that is all it does. */
  readonly movedM?: number;
}

/** The plan with one layout replaced; the same plan when nothing changed. */
export function inLayout(plan: Plan, layoutId: string, change: (layout: Layout) => Layout): Plan {
  const layouts = mapItem(plan.layouts, layoutId, change);
  return layouts === plan.layouts ? plan : { ...plan, layouts };
}

/** The list with one item changed; the same list when the item stays the same object. */
export function mapItem<T extends { readonly id: string }>(
  items: readonly T[],
  id: string,
  change: (item: T) => T,
): readonly T[] {
  return mapItems(items, (item) => (item.id === id ? change(item) : item));
}

/** As map, but the same list when every item stays the same object. */
export function mapItems<T>(items: readonly T[], change: (item: T) => T): readonly T[] {
  let isChanged = false;
  const next = items.map((item) => {
    const changed = change(item);
    if (changed !== item) isChanged = true;
    return changed;
  });
  return isChanged ? next : items;
}

/** Digits of a number that an id is counted on from; a foreign file may hold ids far longer. */
const COUNTED_DIGITS = 9;

/** The first free id `prefix` + number not taken, counting up from the highest in use. */
export function nextId(prefix: string, taken: Iterable<string>): string {
  const ids = new Set(taken);
  let highest = 0;
  for (const id of ids) {
    if (id.startsWith(prefix)) highest = Math.max(highest, countOf(prefix, id));
  }
  return idAfter(prefix, `${prefix}${highest}`, ids);
}

/** The first free id after one that `nextId` gave. */
export function idAfter(prefix: string, before: string, taken: ReadonlySet<string>): string {
  for (let number = countOf(prefix, before) + 1; ; number += 1) {
    const id = `${prefix}${number}`;
    if (!taken.has(id)) return id;
  }
}

function countOf(prefix: string, id: string): number {
  const digits = id.slice(prefix.length);
  const isCounted = digits.length <= COUNTED_DIGITS && /^\d+$/.test(digits);
  return isCounted ? Number(digits) : 0;
}

/** Every id of drawn objects in a layout, surroundings included. */
export function drawnIds(plan: Plan, layout: Layout): readonly string[] {
  return [
    ...layout.beds.map((bed) => bed.id),
    ...layout.plantings.map((planting) => planting.id),
    ...plan.surroundings.map((surrounding) => surrounding.id),
  ];
}

/** Sets the given fields; a field given as undefined is taken away. */
export function patched<T extends object>(
  item: T,
  changes: { readonly [Key in keyof T]?: T[Key] | undefined },
): T {
  const entries = Object.entries({ ...item, ...changes }).filter(
    ([, value]) => value !== undefined,
  );
  return Object.fromEntries(entries) as T;
}
