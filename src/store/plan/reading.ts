/**
 * How the open plan is read: as planned, or as grown on a day by its field record. Both are made by
 * the same checks; the second way is fetched when it is first asked for.
 */
import { type CheckedLayout, checkLayout } from "../../core/checks/checked-layout.ts";
import type { CheckResult } from "../../core/checks/run-checks.ts";
import type { DayNumber } from "../../core/model/day.ts";
import type { Plan } from "../../core/model/plan.ts";

export interface Reading {
  readonly on: DayNumber;
  /** `checkAsGrown` of core/record. */
  readonly judge: (
    plan: Plan,
    layoutId: string,
    on: DayNumber,
    previous?: CheckResult,
  ) => CheckedLayout;
}

/** One layout of the committed plan in its readings. */
export interface Readings {
  readonly kept: CheckedLayout;
  /** As grown; null while the plan is read as planned. */
  readonly grown: CheckedLayout | null;
}

/** @param before what all that is untouched is carried forward from; left out: all is made fresh */
export function readings(
  plan: Plan,
  layoutId: string,
  reading: Reading | null,
  before?: Readings,
): Readings {
  const kept = checkLayout(plan, layoutId, before?.kept.result);
  return {
    kept,
    grown: reading && reading.judge(plan, kept.layout.id, reading.on, before?.grown?.result),
  };
}
