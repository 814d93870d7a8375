/** Lists kept in the order of their ids, brought up to date without sorting them again. */

interface Named {
  readonly id: string;
}

/** What is no longer in a list, by id, and what is new in it. */
export interface ListPatch<T extends Named> {
  /** Ids that are not in the list are passed over. */
  readonly gone: Iterable<string>;
  readonly found: readonly T[];
}

/**
 * A list in the order of ids, no id twice, with a patch applied: what is found takes the place of
 * what has its id. Costs a copy of the references and a search for each change; the same list when
 * nothing is changed.
 */
export function patchedList<T extends Named>(
  list: readonly T[],
  { gone, found }: ListPatch<T>,
): readonly T[] {
  const changes = new Map<string, T | null>();
  for (const id of gone) changes.set(id, null);
  for (const item of found) changes.set(item.id, item);
  if (changes.size === 0) return list;
  const ordered = [...changes].sort(([a], [b]) => (a < b ? -1 : 1));
  const parts: (readonly T[])[] = [];
  let from = 0;
  let isChanged = false;
  for (const [id, item] of ordered) {
    const at = placeOf(list, id, from);
    const isThere = list[at]?.id === id;
    if (!isThere && item === null) continue;
    isChanged = true;
    if (at > from) parts.push(list.slice(from, at));
    if (item !== null) parts.push([item]);
    from = isThere ? at + 1 : at;
  }
  if (!isChanged) return list;
  if (from < list.length) parts.push(list.slice(from));
  return ([] as T[]).concat(...parts);
}

/** The item of an id in a list in the order of ids; undefined: none. */
export function itemOf<T extends Named>(list: readonly T[], id: string): T | undefined {
  const item = list[placeOf(list, id, 0)];
  return item?.id === id ? item : undefined;
}

/** Where an id stands in the list, or would stand. @param from where to begin */
function placeOf(list: readonly Named[], id: string, from: number): number {
  let low = from;
  let high = list.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((list[middle] as Named).id < id) low = middle + 1;
    else high = middle;
  }
  return low;
}
