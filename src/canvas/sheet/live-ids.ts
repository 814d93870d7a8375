/** What must be drawn anew while a gesture runs, and so is left out of the resting drawing. */
import { byId, changedIds } from "../../core/model/changed-ids.ts";
import type { Layout, Plan } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";

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
    for (const id of changedOf(plan.surroundings, shown.surroundings)) live.add(id);
    for (const id of changedOf(layout.beds, shownLayout.beds)) live.add(id);
    for (const id of changedOf(layout.plantings, shownLayout.plantings)) live.add(id);
  }
  for (const planting of shownLayout.plantings) {
    if (planting.bed !== undefined && live.has(planting.bed)) live.add(planting.id);
  }
  return live;
}

/** On every frame of a drag: mostly the same ids stand in the same order, and are compared in place. */
function changedOf<T extends { readonly id: string }>(before: readonly T[], after: readonly T[]) {
  if (before === after) return [];
  const changed: string[] = [];
  for (const [place, item] of after.entries()) {
    const was = before[place];
    if (was?.id !== item.id) return changedIds(byId(before), byId(after));
    if (was !== item) changed.push(item.id);
  }
  return before.length === after.length ? changed : changedIds(byId(before), byId(after));
}

let last: { readonly of: readonly unknown[]; readonly ids: ReadonlySet<string> } | null = null;

/** The ids, worked out once however many layers ask; the same set while the same are in it. */
function liveNow(
  plan: Plan,
  shown: Plan,
  layoutId: string,
  selection: readonly string[],
): ReadonlySet<string> {
  const of = [plan, shown, layoutId, selection];
  const known = last;
  if (known && of.every((part, index) => part === known.of[index])) return known.ids;
  const ids = liveIds(plan, layoutOf(plan, layoutId), shown, layoutOf(shown, layoutId), selection);
  const isSame = known?.ids.size === ids.size && [...ids].every((id) => known.ids.has(id));
  last = { of, ids: isSame ? known.ids : ids };
  return last.ids;
}

/** The same set object for as long as the same ids are in it. */
export function useLiveIds(): ReadonlySet<string> {
  const plan = usePlanStore((state) => state.plan);
  const shown = usePlanStore((state) => state.shown);
  const layoutId = usePlanStore((state) => state.layoutId);
  const selection = useWindowStore((state) => state.selection);
  return liveNow(plan, shown, layoutId, selection);
}
