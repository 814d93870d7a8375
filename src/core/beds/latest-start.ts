/** How and when a new planting starts, as the plan's others of its kind suggest. */
import type { Layout, Plan, Planting } from "../model/plan.ts";

/** The start of the latest planting of a kind in a layout, the first of equals; undefined: none has one. */
export function latestStart(
  { varieties }: Plan,
  { plantings }: Layout,
  kindId: string,
): Planting["start"] {
  const ofKind = new Set(varieties.filter(({ kind }) => kind === kindId).map(({ id }) => id));
  return plantings
    .filter(({ variety }) => ofKind.has(variety))
    .flatMap(({ start }) => start ?? [])
    .reduce<Planting["start"]>(
      (latest, start) => (latest && latest.date >= start.date ? latest : start),
      undefined,
    );
}
