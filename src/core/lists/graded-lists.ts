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

/** How many of each grade. @param lists as many for each grade, one grade after the other */
export function countsOf<G extends string>(
  lists: readonly { readonly size: number }[],
  grades: readonly G[],
): Readonly<Record<G, number>> {
  const each = lists.length / grades.length;
  const counts = grades.map((grade, place): [G, number] => [
    grade,
    lists.slice(place * each, (place + 1) * each).reduce((sum, { size }) => sum + size, 0),
  ]);
  return Object.fromEntries(counts) as Record<G, number>;
}
