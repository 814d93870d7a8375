/** What the walk shows: where it leads, where the walker stands, and the layout as grown on the day. */
import { useMemo } from "react";
import type { CheckedLayout } from "../../core/checks/checked-layout.ts";
import { fieldJobs } from "../../core/fieldwork/field-jobs.ts";
import { jobsDone } from "../../core/fieldwork/job-ticks.ts";
import { type WalkStop, walkStops } from "../../core/fieldwork/walk-stops.ts";
import type { DayNumber } from "../../core/model/day.ts";
import { currentEntries } from "../../core/record/current-entries.ts";
import { checkAsGrown } from "../../core/record/as-grown.ts";
import { useKept } from "../state/plan-actions.ts";
import { today } from "../state/today.ts";
import { useWalkPlace } from "../state/walk-place.ts";
import type { JobsNow } from "./stop-jobs.ts";

export interface WalkNow extends JobsNow {
  readonly planned: CheckedLayout;
  readonly grown: CheckedLayout;
  readonly stops: readonly WalkStop[];
  /** Place of the stop in the list, counted from 0; -1 where there is none. */
  readonly index: number;
  readonly stop: WalkStop | null;
  /** Today, whichever day is written down. */
  readonly today: DayNumber;
}

export function useWalk(): WalkNow {
  const planned = useKept();
  const at = useWalkPlace((state) => state.at);
  const day = useWalkPlace((state) => state.day);
  const now = today();
  const on = day ?? now;
  const { plan, layout } = planned;
  const stops = useMemo(() => walkStops(plan, layout), [plan, layout]);
  const grown = useMemo(() => checkAsGrown(plan, layout.id, on), [plan, layout, on]);
  const jobs = useMemo(() => fieldJobs(planned, grown), [planned, grown]);
  const done = useMemo(() => jobsDone(jobs, plan.entries), [jobs, plan.entries]);
  const current = useMemo(() => currentEntries(plan.entries), [plan.entries]);
  const found = stops.findIndex(({ id }) => id === at);
  const index = found < 0 && stops.length > 0 ? 0 : found;
  const stop = stops[index] ?? null;
  return { planned, grown, stops, index, stop, on, today: now, jobs, done, current };
}
