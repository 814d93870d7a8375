/** Locking: what is locked is not moved, resized or deleted. */
import type { Plan } from "../model/plan.ts";
import { type Edit, inLayout, mapItems, patched } from "./edit.ts";
import * as steps from "../words/step-words.ts";

interface Lockable {
  readonly id: string;
  readonly locked?: boolean | undefined;
}

/** Locks or unlocks beds, plantings and surroundings. */
export function setLocked(
  layoutId: string,
  ids: readonly string[],
  isLocked: boolean,
  title: string,
): Edit {
  const chosen = new Set(ids);
  return { title, apply: (plan) => locking(plan, layoutId, isLocked, ({ id }) => chosen.has(id)) };
}

/** Unlocks everything of a layout, and the surroundings. */
export function unlockAll(layoutId: string): Edit {
  return {
    title: steps.unlockAll,
    apply: (plan) => locking(plan, layoutId, false, () => true),
  };
}

/** How many things of a layout and its surroundings are locked. */
export function lockedCount(plan: Plan, layoutId: string): number {
  const layout = plan.layouts.find(({ id }) => id === layoutId);
  const all: readonly Lockable[] = [
    ...(layout?.beds ?? []),
    ...(layout?.plantings ?? []),
    ...plan.surroundings,
  ];
  return all.filter(({ locked }) => locked === true).length;
}

function locking(
  plan: Plan,
  layoutId: string,
  isLocked: boolean,
  isAsked: (item: Lockable) => boolean,
): Plan {
  const set = <T extends Lockable>(item: T): T => {
    if (!isAsked(item) || (item.locked === true) === isLocked) return item;
    const change: { readonly locked?: boolean | undefined } = {
      locked: isLocked ? true : undefined,
    };
    return patched<Lockable>(item, change) as T;
  };
  const surroundings = mapItems(plan.surroundings, set);
  const next = surroundings === plan.surroundings ? plan : { ...plan, surroundings };
  return inLayout(next, layoutId, (layout) => {
    const beds = mapItems(layout.beds, set);
    const plantings = mapItems(layout.plantings, set);
    return beds === layout.beds && plantings === layout.plantings
      ? layout
      : { ...layout, beds, plantings };
  });
}
