/**
 * A map that differs from another in a few values. Making it costs what differs, not what the map
 * holds; the keys and their order stay those of the other.
 */

/** So many values may differ before the map is copied: a read asks two maps until then. */
const MOST_PATCHES = 64;

class PatchedMap<K, V> implements ReadonlyMap<K, V> {
  readonly base: ReadonlyMap<K, V>;
  readonly patches: ReadonlyMap<K, V>;

  constructor(base: ReadonlyMap<K, V>, patches: ReadonlyMap<K, V>) {
    this.base = base;
    this.patches = patches;
  }

  get size(): number {
    return this.base.size;
  }

  get(key: K): V | undefined {
    return this.patches.has(key) ? this.patches.get(key) : this.base.get(key);
  }

  has(key: K): boolean {
    return this.base.has(key);
  }

  keys(): MapIterator<K> {
    return this.base.keys();
  }

  *entries(): MapIterator<[K, V]> {
    for (const [key, value] of this.base) {
      yield [key, this.patches.has(key) ? (this.patches.get(key) as V) : value];
    }
  }

  *values(): MapIterator<V> {
    for (const [, value] of this.entries()) yield value;
  }

  [Symbol.iterator](): MapIterator<[K, V]> {
    return this.entries();
  }

  forEach(visit: (value: V, key: K, map: ReadonlyMap<K, V>) => void): void {
    for (const [key, value] of this.entries()) visit(value, key, this);
  }
}

/**
 * The map with other values for some of its keys.
 * @param changes only of keys the map has; throws a RangeError for another
 */
export function patchedMap<K, V>(
  map: ReadonlyMap<K, V>,
  changes: ReadonlyMap<K, V>,
): ReadonlyMap<K, V> {
  if (changes.size === 0) return map;
  for (const key of changes.keys()) {
    if (!map.has(key)) throw new RangeError(`A map is patched in a key it has not: ${String(key)}`);
  }
  const base = map instanceof PatchedMap ? (map.base as ReadonlyMap<K, V>) : map;
  const patches = new Map<K, V>(
    map instanceof PatchedMap ? (map.patches as ReadonlyMap<K, V>) : undefined,
  );
  for (const [key, value] of changes) patches.set(key, value);
  const patched = new PatchedMap(base, patches);
  return patches.size > MOST_PATCHES ? new Map(patched) : patched;
}
