/** Varieties the shelf says nothing of. */
import type { Plan, Variety } from "../model/plan.ts";
import { lotBook } from "./lot-book.ts";

/**
 * Varieties of which no lot is entered and no reserve asked for: of these nothing can be said. A
 * hybrid's seed is not kept.
 */
export function unshelvedVarieties(plan: Pick<Plan, "lots" | "varieties">): readonly Variety[] {
  const shelf = lotBook(plan.lots);
  return plan.varieties.filter(
    ({ id, hybrid, reserve }) =>
      hybrid !== true && reserve === undefined && shelf.ofVariety(id).length === 0,
  );
}
