/** Whether all conflicts are being cleared together: what the findings then show. */
import { create } from "zustand";
import { onAnotherPlan } from "../../store/plan/plan-store.ts";

interface ClearingState {
  readonly isAsked: boolean;
  readonly ask: (isAsked: boolean) => void;
}

export const useClearingState = create<ClearingState>()((set) => ({
  isAsked: false,
  ask: (isAsked) => set({ isAsked }),
}));

onAnotherPlan(() => useClearingState.setState({ isAsked: false }));
