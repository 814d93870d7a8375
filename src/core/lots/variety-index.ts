/** Varieties looked up by id. */
import type { Plan, Variety } from "../model/plan.ts";

const indexes = new WeakMap<object, ReadonlyMap<string, Plan["varieties"][number]>>();

/** Varieties by id, made once for each list. */
export function varietyIndex(varieties: Plan["varieties"]) {
  const known = indexes.get(varieties);
  if (known) return known;
  const index = new Map(varieties.map((variety) => [variety.id, variety]));
  indexes.set(varieties, index);
  return index;
}

/** Whether two entries of a seed list are one variety: the same, or of one kind and name. */
export function isSameVariety(a: Variety, b: Variety): boolean {
  const plain = (name: string) => name.normalize("NFC").trim().toLowerCase();
  return a.id === b.id || (a.kind === b.kind && a.name !== "" && plain(a.name) === plain(b.name));
}
