/** A choice of this browser in its local storage, which may be missing, forbidden or full. */

export interface Stored<T> {
  readonly load: () => T;
  /** Refused or full: the choice then lasts until the page is closed. */
  readonly save: (value: T) => void;
}

/**
 * @param read makes the value of what is stored, which may be old, of another version or broken:
 *   a text, or what it holds as JSON; null when nothing is stored
 */
export function stored<T>(key: string, read: (value: unknown) => T): Stored<T> {
  return {
    load: () => read(heldBy(key)),
    save: (value) => {
      try {
        globalThis.localStorage?.setItem(
          key,
          typeof value === "string" ? value : JSON.stringify(value),
        );
      } catch {
        return;
      }
    },
  };
}

function heldBy(key: string): unknown {
  let text: string | null = null;
  try {
    text = globalThis.localStorage?.getItem(key) ?? null;
    return text === null ? null : JSON.parse(text);
  } catch {
    return text;
  }
}

/** One of a few words, else the first of them. */
export function oneOf<T extends string>(choices: readonly [T, ...T[]]): (value: unknown) => T {
  return (value) => choices.find((choice) => choice === value) ?? choices[0];
}

/** Entries of an object that are what they must be; none when it is something else. */
export function entriesOf<T>(
  isEntry: (value: unknown) => value is T,
): (value: unknown) => Readonly<Record<string, T>> {
  return (value) => {
    if (typeof value !== "object" || value === null) return {};
    const entries = Object.entries(value);
    return Object.fromEntries(entries.filter((entry): entry is [string, T] => isEntry(entry[1])));
  };
}
