/** Ways of working with the pointer that last until they are left: selecting several, and the pen. */
import { create } from "zustand";

interface SheetModes {
  /** Taps add to the selection and take away from it; drags over empty ground select a region. */
  readonly isSelectingSeveral: boolean;
  /** A pen is in use: fingers and palms only move the view. */
  readonly isPenInUse: boolean;
}

export const useSheetModes = create<SheetModes>()(() => ({
  isSelectingSeveral: false,
  isPenInUse: false,
}));
