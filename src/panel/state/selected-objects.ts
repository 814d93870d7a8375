/** What the selected ids stand for. */
import type { Bed, Layout, Plan, Planting, Surrounding } from "../../core/model/plan.ts";
import { bedNoun, groundNoun, plantingNoun } from "./object-words.ts";
import { counted as countedAny, formOf } from "../../core/words/plurals.ts";

export interface SelectedObjects {
  readonly beds: readonly Bed[];
  readonly plantings: readonly Planting[];
  readonly surroundings: readonly Surrounding[];
}

export function selectedObjects(
  plan: Plan,
  layout: Layout,
  ids: readonly string[],
): SelectedObjects {
  const wanted = new Set(ids);
  return {
    beds: layout.beds.filter((bed) => wanted.has(bed.id)),
    plantings: layout.plantings.filter((planting) => wanted.has(planting.id)),
    surroundings: plan.surroundings.filter((surrounding) => wanted.has(surrounding.id)),
  };
}

/** The value all items share, or null when they differ; `undefined` is a value like any other. */
export function sharedValue<T, V>(
  items: readonly T[],
  valueOf: (item: T) => V,
): { readonly value: V } | null {
  const [first, ...others] = items;
  if (first === undefined) return null;
  const value = valueOf(first);
  return others.every((item) => Object.is(valueOf(item), value)) ? { value } : null;
}

/** `1 bed, 2 plantings`. */
export function countedObjects({ beds, plantings, surroundings }: SelectedObjects): string {
  return [
    [beds.length, bedNoun] as const,
    [plantings.length, plantingNoun] as const,
    [surroundings.length, groundNoun] as const,
  ]
    .filter(([count]) => count > 0)
    .map(([count, noun]) => countedAny(count, noun))
    .join(", ");
}

/** `1 bed`, `2 beds`; nothing for none. */
export function counted(count: number, one: string, many: string): string {
  if (count === 0) return "";
  return `${count} ${formOf(count, { one, other: many })}`;
}
