/** What an edit has added, and what is like the chosen objects. */
import type { Layout, Plan } from "../../core/model/plan.ts";
import { selectedObjects } from "./selected-objects.ts";

/** Objects of a layout that an edit has added; plantings that came with a new bed are left out. */
export function newIds(before: Plan, after: Plan, layoutId: string): readonly string[] {
  const old = before.layouts.find(({ id }) => id === layoutId);
  const next = after.layouts.find(({ id }) => id === layoutId);
  const known = new Set(
    [...(old?.beds ?? []), ...(old?.plantings ?? []), ...before.surroundings].map(({ id }) => id),
  );
  const beds = (next?.beds ?? []).filter(({ id }) => !known.has(id));
  const bedIds = new Set(beds.map(({ id }) => id));
  const plantings = (next?.plantings ?? []).filter(
    ({ id, bed }) => !known.has(id) && !bedIds.has(bed ?? ""),
  );
  const surroundings = after.surroundings.filter(({ id }) => !known.has(id));
  return [...beds, ...plantings, ...surroundings].map(({ id }) => id);
}

/**
 * Ids of what is like the chosen objects: plantings of the same kind or variety (beds are like
 * beds, surroundings of one sort alike), or a bed with everything in it.
 */
export function alike(
  plan: Plan,
  layout: Layout,
  ids: readonly string[],
  what: "kind" | "variety" | "bed",
): readonly string[] {
  const { beds, plantings, surroundings } = selectedObjects(plan, layout, ids);
  if (what === "bed") {
    const bedIds = new Set([...beds.map(({ id }) => id), ...plantings.map(({ bed }) => bed ?? "")]);
    const inside = layout.plantings.filter(({ bed }) => bedIds.has(bed ?? "none"));
    return [...new Set([...inside.map(({ id }) => id), ...plantings.map(({ id }) => id)])];
  }
  const kindOf = new Map(plan.varieties.map(({ id, kind }) => [id, kind]));
  const keyOf = (variety: string) => (what === "kind" ? kindOf.get(variety) : variety);
  const keys = new Set(plantings.map(({ variety }) => keyOf(variety)));
  const sorts = new Set(surroundings.map(({ what: sort, kind }) => `${sort} ${kind ?? ""}`));
  return [
    ...(beds.length > 0 ? layout.beds : []).map(({ id }) => id),
    ...layout.plantings.filter(({ variety }) => keys.has(keyOf(variety))).map(({ id }) => id),
    ...plan.surroundings
      .filter(({ what: sort, kind }) => sorts.has(`${sort} ${kind ?? ""}`))
      .map(({ id }) => id),
  ];
}
