/** A change of a layout as the objects it leaves: plain data, which a thread can send. */
import { type Edit, inLayout, mapItems } from "../edits/edit.ts";
import type { Layout, Plan, Planting, Surrounding, Variety } from "../model/plan.ts";

export interface ObjectChange {
  /** Plantings as they are then. */
  readonly plantings: readonly Planting[];
  /** Ids of plantings that are no longer there. */
  readonly gone: readonly string[];
  readonly surroundings: readonly Surrounding[];
  readonly varieties: readonly Variety[];
}

/** What became of the objects of a layout between two states of a plan; nothing is ever added. */
export function objectChange(before: Plan, after: Plan, layoutId: string): ObjectChange {
  const layoutOf = ({ layouts }: Plan) => layouts.find(({ id }) => id === layoutId);
  const [was, is] = [layoutOf(before)?.plantings ?? [], layoutOf(after)?.plantings ?? []];
  const left = new Set(is.map(({ id }) => id));
  return {
    plantings: changed(was, is),
    gone: was.flatMap(({ id }) => (left.has(id) ? [] : [id])),
    surroundings: changed(before.surroundings, after.surroundings),
    varieties: changed(before.varieties, after.varieties),
  };
}

function changed<T extends { readonly id: string }>(
  before: readonly T[],
  after: readonly T[],
): readonly T[] {
  const known = new Map(before.map((item) => [item.id, item]));
  return after.filter((item) => known.has(item.id) && known.get(item.id) !== item);
}

/** Changes made one after the other, as one edit; what is not there is left out. */
export function makeChanges(
  layoutId: string,
  changes: readonly ObjectChange[],
  title: string,
): Edit {
  return {
    title,
    apply: (plan) => changes.reduce((next, change) => made(next, layoutId, change), plan),
  };
}

function made(plan: Plan, layoutId: string, change: ObjectChange): Plan {
  const surroundings = replaced(plan.surroundings, change.surroundings);
  const varieties = replaced(plan.varieties, change.varieties);
  const isSame = surroundings === plan.surroundings && varieties === plan.varieties;
  const gone = new Set(change.gone);
  return inLayout(
    isSame ? plan : { ...plan, surroundings, varieties },
    layoutId,
    (layout): Layout => {
      const plantings = replaced(layout.plantings, change.plantings);
      const left = plantings.some(({ id }) => gone.has(id))
        ? plantings.filter(({ id }) => !gone.has(id))
        : plantings;
      return left === layout.plantings ? layout : { ...layout, plantings: left };
    },
  );
}

function replaced<T extends { readonly id: string }>(
  items: readonly T[],
  by: readonly T[],
): readonly T[] {
  const next = new Map(by.map((item) => [item.id, item]));
  return mapItems(items, (item) => next.get(item.id) ?? item);
}
