/** Keys that somebody has chosen for commands, kept in this browser. */
import { create } from "zustand";
import { entriesOf, stored } from "../../store/window/stored.ts";
import type { Chord, Command } from "./command.ts";

type OwnKeys = Readonly<Record<string, Chord>>;

function isChord(value: unknown): value is Chord {
  return typeof value === "object" && value !== null && "key" in value
    ? typeof value.key === "string" && value.key !== ""
    : false;
}

const storedKeys = stored<OwnKeys>("wideberth.keys", entriesOf(isChord));

interface OwnKeysState {
  readonly keys: OwnKeys;
  readonly setKeys: (id: string, chord: Chord) => void;
  readonly forgetKeys: () => void;
}

export const useOwnKeys = create<OwnKeysState>()((set, get) => ({
  keys: storedKeys.load(),
  setKeys: (id, chord) => {
    const keys = { ...get().keys, [id]: chord };
    storedKeys.save(keys);
    set({ keys });
  },
  forgetKeys: () => {
    storedKeys.save({});
    set({ keys: {} });
  },
}));

/** The keys of a command: one's own, else the given ones. */
export function keysOf({ id, keys = [] }: Command): readonly Chord[] {
  const own = useOwnKeys.getState().keys[id];
  return own ? [own] : keys;
}
