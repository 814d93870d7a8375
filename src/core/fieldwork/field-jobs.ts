/** The season's jobs as they stand in the field: their days as grown, planned covers not forgotten. */
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { type Job, seasonJobs } from "./season-calendar.ts";

/**
 * Jobs of one layout by what was seen so far. Read as grown a cover counts only while it stands;
 * one that is planned and overdue must not vanish from the list of jobs, so covers are the plan's.
 * @param planned and grown two readings of one layout
 */
export function fieldJobs(planned: CheckedLayout, grown: CheckedLayout): readonly Job[] {
  const stands = grown.result.stands.map((stand) => {
    const cover = planned.result.standById.get(stand.id)?.cover ?? "none";
    return cover === "none" || cover === stand.cover ? stand : { ...stand, cover };
  });
  return seasonJobs({ ...grown, result: { ...grown.result, stands } });
}
