/** Where the walk stands and which day is written down; other parts of the window send it to a plot. */
import { create } from "zustand";
import type { DayNumber } from "../../core/model/day.ts";
import { viewNow } from "./view-state.ts";

interface WalkPlace {
  /** Id of the plot or pollen source the walker stands before; null: the first. */
  readonly at: string | null;
  /** The day what is written is dated; null: today. */
  readonly day: DayNumber | null;
  readonly goTo: (id: string) => void;
  readonly setDay: (day: DayNumber | null) => void;
}

export const useWalkPlace = create<WalkPlace>()((set) => ({
  at: null,
  day: null,
  goTo: (at) => set({ at }),
  setDay: (day) => set({ day }),
}));

/** Opens the walk at a plot or pollen source. */
export function walkTo(id: string): void {
  useWalkPlace.getState().goTo(id);
  viewNow().showView("walk");
}
