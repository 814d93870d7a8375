/** A pollen source of some outline that is to be added once it is known what flowers there. */
import { create } from "zustand";
import type { Shape } from "../../core/model/plan.ts";

interface SourceAsk {
  /** A new object each time it is asked. */
  readonly asked: { readonly outline: Shape; readonly name?: string | undefined } | null;
}

export const useSourceAsk = create<SourceAsk>()(() => ({ asked: null }));

/** @param name as it was given already; left out: it is named for what flowers there */
export function askSource(outline: Shape, name?: string): void {
  useSourceAsk.setState({ asked: { outline, name } });
}
