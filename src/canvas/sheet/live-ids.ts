/** What must be drawn anew while a gesture runs, and so is left out of the resting drawing. */
import { useMemo } from "react";
import type { Layout, Plan } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";

type Entry = { readonly id: string };

/** Ids in either list whose object is not the same in both. */
function changedIds(before: readonly Entry[], after: readonly Entry[], into: Set<string>): void {
  if (before === after) return;
  const earlier = new Map(before.map((entry) => [entry.id, entry]));
  for (const entry of after) {
    if (earlier.get(entry.id) !== entry) into.add(entry.id);
    earlier.delete(entry.id);
  }
  for (const id of earlier.keys()) into.add(id);
}

/**
 * Selected plantings, selected beds with their plantings, and whatever the preview changes.
 * Selected surroundings stay at rest until they move: drawn anew they would cover what lies on them.
 */
export function liveIds(
  plan: Plan,
  layout: Layout,
  shown: Plan,
  shownLayout: Layout,
  selection: readonly string[],
): ReadonlySet<string> {
  const around = new Set(shown.surroundings.map((surrounding) => surrounding.id));
  const live = new Set(selection.filter((id) => !around.has(id)));
  if (plan !== shown) {
    changedIds(plan.surroundings, shown.surroundings, live);
    changedIds(layout.beds, shownLayout.beds, live);
    changedIds(layout.plantings, shownLayout.plantings, live);
  }
  for (const planting of shownLayout.plantings) {
    if (planting.bed !== undefined && live.has(planting.bed)) live.add(planting.id);
  }
  return live;
}

let last: { readonly of: readonly unknown[]; readonly key: string } | null = null;

/** The ids as one text, worked out once however many layers ask. */
function liveKey(plan: Plan, shown: Plan, layoutId: string, selection: readonly string[]): string {
  const of = [plan, shown, layoutId, selection];
  const known = last;
  if (known && of.every((part, index) => part === known.of[index])) return known.key;
  const ids = liveIds(plan, layoutOf(plan, layoutId), shown, layoutOf(shown, layoutId), selection);
  const key = [...ids].sort().join(" ");
  last = { of, key };
  return key;
}

/** The same set object for as long as the same ids are in it. */
export function useLiveIds(): ReadonlySet<string> {
  const plan = usePlanStore((state) => state.plan);
  const shown = usePlanStore((state) => state.shown);
  const layoutId = usePlanStore((state) => state.layoutId);
  const selection = useWindowStore((state) => state.selection);
  const key = liveKey(plan, shown, layoutId, selection);
  return useMemo(() => new Set(key === "" ? [] : key.split(" ")), [key]);
}
