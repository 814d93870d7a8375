/** Which lots crosses may be in: those that may have crossed, and all that came of them. */
import { crossedForebears, mayHaveCrossed } from "../lots/lot-book.ts";
import type { Plan } from "../model/plan.ts";

const crossed = new WeakMap<Plan["lots"], ReadonlyMap<string, readonly string[]>>();

/**
 * By the id of a lot, the codes of those that were not kept apart, itself or what it comes from;
 * lots without any are not there. Found once for the same list of lots.
 */
export function crossedLots(lots: Plan["lots"]): ReadonlyMap<string, readonly string[]> {
  const known = crossed.get(lots);
  if (known) return known;
  const isAny = lots.some((lot) => mayHaveCrossed(lot) || lot.crossedBefore !== undefined);
  const all = isAny ? lots.map((lot) => [lot.id, crossedForebears(lots, lot)] as const) : [];
  const made = new Map(all.filter(([, codes]) => codes.length > 0));
  crossed.set(lots, made);
  return made;
}
