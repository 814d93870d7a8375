/** What differs between two states of the same things, by their ids. */

/** Ids in either whose item is not the same object in both. */
export function changedIds(
  before: ReadonlyMap<string, unknown>,
  after: ReadonlyMap<string, unknown>,
): readonly string[] {
  const changed: string[] = [];
  for (const [id, item] of after) if (before.get(id) !== item) changed.push(id);
  for (const id of before.keys()) if (!after.has(id)) changed.push(id);
  return changed;
}

/** Entries by their ids. */
export function byId<T extends { readonly id: string }>(
  entries: readonly T[],
): ReadonlyMap<string, T> {
  return new Map(entries.map((entry) => [entry.id, entry]));
}
