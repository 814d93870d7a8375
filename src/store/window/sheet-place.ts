/** Where the grower stands, for the sheet to draw; see position.ts for where it comes from. */
import { create } from "zustand";

export interface SheetPlace {
  /** Sheet metres. */
  readonly x: number;
  readonly y: number;
  readonly accuracyM: number;
}

/** Null: not known, or nobody asked. */
export const useSheetPlace = create<{ readonly place: SheetPlace | null }>()(() => ({
  place: null,
}));
