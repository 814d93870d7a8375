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

/** The first free id `prefix` + number not taken, counting up from the highest in use. */
export function nextId(prefix: string, taken: Iterable<string>): string {
  let highest = 0;
  for (const id of taken) {
    if (!id.startsWith(prefix)) continue;
    const number = Number(id.slice(prefix.length));
    if (Number.isInteger(number) && number > highest) highest = number;
  }
  return `${prefix}${highest + 1}`;
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
