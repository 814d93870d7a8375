/** What an outline that is drawn corner by corner becomes: picked beside the drawing or in a dialog. */
import { create } from "zustand";
import type { OutlineTarget } from "../../core/outlines/drawn-outline.ts";

export const useOutlineTarget = create<{ readonly target: OutlineTarget }>()(() => ({
  target: "bed",
}));
