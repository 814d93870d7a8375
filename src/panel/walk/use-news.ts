/** What this walk found out: findings as grown that were not there, or milder, when it began. */
import { useMemo, useState } from "react";
import type { Finding } from "../../core/checks/all-checks.ts";
import { checkAsGrown } from "../../core/record/as-grown.ts";
import { fieldChanges } from "../../core/record/field-changes.ts";
import { planNow } from "../state/plan-actions.ts";
import type { WalkNow } from "./use-walk.ts";

const NOTHING_NEW: readonly Finding[] = [];

export function useNews({ grown, planned, on }: WalkNow): readonly Finding[] {
  const [begun] = useState(() => planNow().plan);
  const layoutId = planned.layout.id;
  const isAsBegun = planned.plan === begun;
  const before = useMemo(
    () =>
      isAsBegun || !begun.layouts.some(({ id }) => id === layoutId)
        ? null
        : checkAsGrown(begun, layoutId, on),
    [isAsBegun, begun, layoutId, on],
  );
  return useMemo(() => (before ? fieldChanges(before, grown).worse : NOTHING_NEW), [before, grown]);
}
