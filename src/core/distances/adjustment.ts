import type { BorderRowTable } from "./border-rows.ts";

/** A change to a distance that a regulation itself gives. */
export type AdjustmentEffect =
  /** The distance times a factor, e.g. a half behind barriers. */
  | { readonly kind: "times"; readonly factor: number }
  /** Never more than so many feet: a relief. */
  | { readonly kind: "at most"; readonly feet: number }
  /** Never less than so many feet: an increase. */
  | { readonly kind: "at least"; readonly feet: number };

export interface Adjustment {
  readonly id: string;
  /** The condition the grower states, e.g. "natural or artificial barriers protect the field". */
  readonly condition: string;
  /** Ids of kinds it is printed for; empty where the kind is not carried. */
  readonly kinds: readonly string[];
  /** Crops as printed. */
  readonly crops: string;
  readonly effect: AdjustmentEffect;
  /** How border rows shorten the distance further; `effect` is then that of none. */
  readonly borderRows?: BorderRowTable;
  /** Id of a source (sources.ts). */
  readonly source: string;
  /** Where in the source, e.g. "footnote 26". */
  readonly place: string;
  readonly note?: string;
}
