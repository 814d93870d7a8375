/** Items of some grades in a list for each grade, in the order of ids and in pages. */
import { IdPages, type ListPatch } from "./id-pages.ts";

interface Graded {
  readonly id: string;
  readonly severity: string;
}

/** A list for each grade, in the order of the grades. */
export type GradedLists<T extends Graded> = readonly IdPages<T>[];

/** @param items of several with one id the last counts */
export function gradedLists<T extends Graded>(
  items: readonly T[],
  grades: readonly string[],
): GradedLists<T> {
  // Texts by themselves are put in code-unit order many times faster than by a comparing function.
  const byId = new Map(items.map((item) => [item.id, item]));
  const ordered = [...byId.keys()].sort().map((id) => byId.get(id) as T);
  return grades.map((grade) => IdPages.of(ordered.filter(({ severity }) => severity === grade)));
}

/** The lists with a patch applied: an item may come back in another grade. */
export function patchedLists<T extends Graded>(
  lists: GradedLists<T>,
  { gone, found }: ListPatch<T>,
  grades: readonly string[],
): GradedLists<T> {
  const ids = [...gone];
  if (ids.length === 0 && found.length === 0) return lists;
  return lists.map((list, place) =>
    list.patched({
      gone: ids,
      found: found.filter(({ severity }) => severity === grades[place]),
    }),
  );
}

/** All items, grade by grade. */
export const allOf = <T extends Graded>(lists: GradedLists<T>): readonly T[] =>
  lists.flatMap(({ all }) => all);
