/** Days of one planting against each other, and its clearing against its ripe seed. */
import { isRipeBy } from "../calendar/cleared-bloom.ts";
import { endOf } from "../calendar/ground-time.ts";
import type { CheckInput } from "../checks/check.ts";
import { findingId } from "../checks/finding.ts";
import type { ClearedEarlyFinding, DateOrderFinding } from "../checks/ground-checks.ts";
import type { Stand } from "../checks/stand.ts";
import { isoFromDay } from "../model/day.ts";

export function findClearedEarly({
  stands,
}: CheckInput<ClearedEarlyFinding>): readonly ClearedEarlyFinding[] {
  return stands.flatMap((stand) => clearedEarly(stand) ?? []);
}

function clearedEarly({ id, planting, isSeedParent, ripe }: Stand): ClearedEarlyFinding | null {
  const end = planting && endOf(planting);
  if (end === null || !isSeedParent || isRipeBy(ripe, end)) return null;
  return {
    // The day is what is required: accepted, it comes back when that changes.
    id: findingId("cleared-early", [id], isoFromDay(end)),
    check: "cleared-early",
    severity: ripe === null ? "unknown" : "caution",
    subjects: [id],
    subject: id,
    end,
    ripeLikely: ripe?.likely ?? null,
    ripeLatest: ripe?.latest ?? null,
    isBeyond: ripe?.isBeyond === true,
  };
}

export function findDateOrder({
  stands,
}: CheckInput<DateOrderFinding>): readonly DateOrderFinding[] {
  return stands.flatMap(({ id, planting }) => {
    const { start, end } = planting ?? {};
    if (!start) return [];
    const { sownUnderGlass } = start;
    const isEndBefore = end !== undefined && end < start.date;
    const isSownAfter = sownUnderGlass !== undefined && sownUnderGlass > start.date;
    if (!isEndBefore && !isSownAfter) return [];
    return [
      {
        id: findingId("date-order", [id], isoFromDay(isEndBefore ? end : start.date)),
        check: "date-order" as const,
        severity: "caution" as const,
        subjects: [id],
        subject: id,
        sownUnderGlass: isSownAfter ? sownUnderGlass : null,
        start: start.date,
        end: isEndBefore ? end : null,
      },
    ];
  });
}
