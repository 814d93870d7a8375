/** The grower's weights for the measures compared, for as long as the window is open. Never saved in a plan. */
import { create } from "zustand";
import type { MeasureName } from "../../core/compare/compare-layouts.ts";
import type { MeasureWeights } from "../../core/compare/own-totals.ts";

interface CompareWeights {
  /** Whether the column of weights is shown. */
  readonly isWeighing: boolean;
  readonly weights: MeasureWeights;
  readonly toggle: () => void;
  readonly setWeight: (name: MeasureName, weight: number) => void;
}

export const useCompareWeights = create<CompareWeights>()((set, get) => ({
  isWeighing: false,
  weights: {},
  toggle: () => set({ isWeighing: !get().isWeighing }),
  setWeight: (name, weight) => set({ weights: { ...get().weights, [name]: weight } }),
}));
