/** Keys that somebody has chosen for commands, kept in this browser. */
import { create } from "zustand";
import type { Chord, Command } from "./command.ts";

const STORE_KEY = "wideberth.keys";

type OwnKeys = Readonly<Record<string, Chord>>;

/** What is stored may be old, of another version or broken: only whole chords count. */
function stored(): OwnKeys {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(STORE_KEY) ?? "{}");
    if (typeof value !== "object" || value === null) return {};
    return Object.fromEntries(
      Object.entries(value).filter((entry): entry is [string, Chord] => isChord(entry[1])),
    );
  } catch {
    return {};
  }
}

function isChord(value: unknown): boolean {
  return typeof value === "object" && value !== null && "key" in value
    ? typeof value.key === "string" && value.key !== ""
    : false;
}

/** Storage may be forbidden or full: the choice then lasts until the page is closed. */
function store(keys: OwnKeys): void {
  try {
    localStorage.setItem(STORE_KEY, JSON.stringify(keys));
  } catch {
    return;
  }
}

interface OwnKeysState {
  readonly keys: OwnKeys;
  readonly setKeys: (id: string, chord: Chord) => void;
  readonly forgetKeys: () => void;
}

export const useOwnKeys = create<OwnKeysState>()((set, get) => ({
  keys: stored(),
  setKeys: (id, chord) => {
    const keys = { ...get().keys, [id]: chord };
    store(keys);
    set({ keys });
  },
  forgetKeys: () => {
    store({});
    set({ keys: {} });
  },
}));

/** The keys of a command: one's own, else the given ones. */
export function keysOf({ id, keys = [] }: Command): readonly Chord[] {
  const own = useOwnKeys.getState().keys[id];
  return own ? [own] : keys;
}
