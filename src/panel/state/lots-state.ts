/** What the view of lots shows: which list, which lots are picked, how they are found and sorted. */
import { create } from "zustand";
import { onAnotherPlan } from "../../store/plan/plan-store.ts";

export const shelfSorts = [
  "variety",
  "code",
  "age",
  "weakest first",
  "short first",
  "place",
] as const;
export type ShelfSort = (typeof shelfSorts)[number];

export const statesShown = ["in stock", "gone", "all"] as const;
export type StateShown = (typeof statesShown)[number];

export type LotsPart = "shelf" | "renew" | "sow";

interface LotsState {
  readonly part: LotsPart;
  readonly query: string;
  readonly sort: ShelfSort;
  readonly stateShown: StateShown;
  /** Ids of the picked lots, in the order they were picked. */
  readonly picked: readonly string[];
  /** Id of the lot the keys are on; null: none yet. */
  readonly active: string | null;
}

interface LotsActions {
  readonly showPart: (part: LotsPart) => void;
  readonly find: (query: string) => void;
  readonly sortBy: (sort: ShelfSort) => void;
  readonly showStates: (stateShown: StateShown) => void;
  readonly pick: (picked: readonly string[], active: string | null) => void;
  /** Shows one lot on the shelf, whatever was asked for there before. */
  readonly openLot: (id: string) => void;
}

const START = {
  part: "shelf",
  query: "",
  sort: "variety",
  stateShown: "in stock",
  picked: [],
  active: null,
} as const satisfies LotsState;

export const useLots = create<LotsState & LotsActions>()((set) => ({
  ...START,
  showPart: (part) => set({ part }),
  find: (query) => set({ query }),
  sortBy: (sort) => set({ sort }),
  showStates: (stateShown) => set({ stateShown }),
  pick: (picked, active) => set({ picked, active }),
  openLot: (id) => set({ part: "shelf", query: "", stateShown: "all", picked: [id], active: id }),
}));

onAnotherPlan(() => useLots.setState({ ...START }));

/** The state at this moment, for what happens on a press or a key; nothing is watched. */
export function lotsNow(): LotsState & LotsActions {
  return useLots.getState();
}
