/** Varieties looked up by id. */
import type { Plan } from "../model/plan.ts";

const indexes = new WeakMap<object, ReadonlyMap<string, Plan["varieties"][number]>>();

/** Varieties by id, made once for each list. */
export function varietyIndex(varieties: Plan["varieties"]) {
  const known = indexes.get(varieties);
  if (known) return known;
  const index = new Map(varieties.map((variety) => [variety.id, variety]));
  indexes.set(varieties, index);
  return index;
}
