/** A pollen source of some outline that is to be added once it is known what flowers there. */
import { create } from "zustand";
import type { Shape } from "../../core/model/plan.ts";

interface SourceAsk {
  /** A new object each time it is asked. */
  readonly asked: { readonly outline: Shape } | null;
}

export const useSourceAsk = create<SourceAsk>()(() => ({ asked: null }));

export function askSource(outline: Shape): void {
  useSourceAsk.setState({ asked: { outline } });
}
