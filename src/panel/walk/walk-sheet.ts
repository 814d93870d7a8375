import type { Entry } from "../../core/model/plan.ts";

/** What lies over the buttons of a plot: more to choose from, or what an entry asks for; null: nothing. */
export type WalkSheet =
  | "more"
  | "plots"
  | "jobs"
  | "position"
  | "source"
  | { readonly asks: Entry["what"] }
  | null;
