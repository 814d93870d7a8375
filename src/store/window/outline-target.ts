/** What an outline that is drawn corner by corner becomes: picked beside the drawing or in a dialog. */
import { create } from "zustand";
import type { SurroundingSort } from "../../core/model/plan.ts";

export type OutlineTarget = "bed" | "site" | SurroundingSort;

export const useOutlineTarget = create<{ readonly target: OutlineTarget }>()(() => ({
  target: "bed",
}));
