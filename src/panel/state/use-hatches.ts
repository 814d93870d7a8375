import { useMemo } from "react";
import { type Hatch, hatchByGroup } from "../../core/page/hatch.ts";
import type { Plan } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";

/** Hatch of each crossing group of the plan. */
export function useHatches(plan: Plan): ReadonlyMap<string, Hatch> {
  const book = usePlanStore((state) => state.book);
  return useMemo(() => hatchByGroup(plan, (kind) => book.kind(kind)?.group), [plan, book]);
}
