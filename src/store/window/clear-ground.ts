/** Clear ground of the planting that is moved or asked about, as the sheet shows it. */
import { create } from "zustand";

export interface ShownGround {
  /** Ground the planting could cover: rings, metres, holes included. */
  readonly rings: readonly Float64Array[];
  /** What it means, in words. */
  readonly words: string;
}

interface ClearGroundState {
  /** Shown for the selected planting even while nothing is dragged. */
  readonly isAsked: boolean;
  readonly shown: ShownGround | null;
  readonly ask: (isAsked: boolean) => void;
  readonly show: (shown: ShownGround | null) => void;
}

export const useClearGroundState = create<ClearGroundState>()((set) => ({
  isAsked: false,
  shown: null,
  ask: (isAsked) => set({ isAsked }),
  show: (shown) => set({ shown }),
}));
