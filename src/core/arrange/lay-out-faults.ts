/** Why a seed list cannot be laid out at all. */
import type { Layout } from "../model/plan.ts";
import type { LeftVariety, SeedParts } from "./seed-parts.ts";

export type LayOutFault =
  | { readonly why: "no-beds" | "nothing-wanted" | "no-dates" | "no-room" }
  /** Each variety has its own reason. */
  | { readonly why: "nothing-left"; readonly left: readonly LeftVariety[] };

/** The first reason there is; null: it can be tried. */
export function layOutFault(
  layout: Layout,
  { parts, wanted, left }: SeedParts,
): LayOutFault | null {
  if (layout.beds.length === 0) return { why: "no-beds" };
  if (parts.length === 0 && left.length === 0) return { why: "nothing-wanted" };
  if (parts.length === 0) {
    const isFull = left.every(({ reason }) => reason.why === "no-room");
    return isFull ? { why: "no-room" } : { why: "nothing-left", left };
  }
  return wanted.every(({ starts }) => !starts.usual) ? { why: "no-dates" } : null;
}
