/** The shade of how much would cross, as the sheet shows it for the planting in hand. */
import { create } from "zustand";
import type { Shade } from "../../core/crossing-share/shade.ts";

interface CrossingShadeState {
  readonly isAsked: boolean;
  /** Null while there is none to show. */
  readonly shade: Shade | null;
  /** What it means, or why there is none; empty while it is not asked for. */
  readonly words: string;
  readonly ask: (isAsked: boolean) => void;
  readonly show: (shade: Shade | null, words: string) => void;
}

export const useCrossingShadeState = create<CrossingShadeState>()((set) => ({
  isAsked: false,
  shade: null,
  words: "",
  ask: (isAsked) => set({ isAsked }),
  show: (shade, words) => set({ shade, words }),
}));
